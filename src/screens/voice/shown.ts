// What each command that only shows something brings into sight: a panel, a sheet, a way out, an order, a place.

import type { Command } from '../../parse/index.ts';
import type { Panel } from '../frame/panels.ts';
import type { Sheet } from '../frame/tools.ts';
import type { ReportOrder } from '../report/report-orders.ts';
import type { WayName } from '../report/ways.ts';

/** The panel that a command shows. */
export const PANEL_SHOWN: Readonly<Partial<Record<Command, Panel>>> = {
  'show-exam': 'talk',
  'show-entries': 'entries',
  'show-body': 'body',
  'show-signs': 'signs',
  'show-report': 'report',
  'show-timeline': 'report',
  'show-questions': 'entries',
  'show-front': 'body',
  'show-back': 'body',
};

/** Where on its panel a thing stands that was asked for. */
export const PLACE: Readonly<Partial<Record<Command, string>>> = {
  'show-timeline': 'timeline-title',
  'show-questions': 'questions-title',
};

/** The sheet that a command opens. */
export const SHEET_SHOWN: Readonly<Partial<Record<Command, Sheet>>> = {
  'show-records': 'records',
  'show-settings': 'more',
  'show-cautions': 'cautions',
  'show-ready': 'ready',
  'show-hearing': 'hearing',
  'show-link': 'link',
};

/** The way out or in that a command opens. */
export const WAY_OPENED = {
  'read-report': 'radio',
  'show-print': 'print',
  'show-symbols': 'show',
  'show-receive': 'receive',
} as const satisfies Partial<Record<Command, WayName>>;

/** The order of a report that a command chooses. */
export const ORDER_CHOSEN: Readonly<Partial<Record<Command, ReportOrder>>> = {
  'order-radio': 'radio',
  'order-atmist': 'ATMIST',
  'order-imist-ambo': 'IMIST-AMBO',
  'order-sbar': 'SBAR',
  'order-soap': 'SOAP',
};

/** The part of the records sheet that is brought into sight. */
export const RECORDS_AT = {
  'show-close': 'close-record',
  'show-export': 'transfer',
  'show-wipe': 'record-open-now',
} as const satisfies Partial<Record<Command, string>>;
