// Promises everything that stands in a record as it goes on paper: nothing standing is left out, and what was corrected shows.

export { type VitalChart, vitalCharts } from './charts.ts';
export { type Cell, type PrintedTable, printedTables, UNCONFIRMED_SIGN } from './findings.ts';
export { type PrintedRecord, type PrintedSection, printedRecord } from './record.ts';
