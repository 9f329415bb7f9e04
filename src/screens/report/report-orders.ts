// The orders in which the report panel shows a handover, with the names on their buttons.

export const REPORT_ORDERS = [
  ['radio', 'Radio, timeline'],
  ['ATMIST', 'ATMIST'],
  ['IMIST-AMBO', 'IMIST-AMBO'],
  ['SBAR', 'SBAR'],
  ['SOAP', 'SOAP'],
] as const;

export type ReportOrder = (typeof REPORT_ORDERS)[number][0];
