// Promises vitals as sets and series with their trends, and when the next set is due.

export { type AbnormalSign, abnormalNow } from './abnormal.ts';
export { isBeyond } from './beyond.ts';
export { type Due, type DueOptions, dueOf, type Stability } from './due.ts';
export { MEASURES, type Measure, type Point, pointsOf, UNIT } from './measures.ts';
export { type Speaking, spokenReminder } from './reminder.ts';
export { SERIES_RULES, type Series, type SeriesPoint } from './series.ts';
export { setsOf, type VitalSet } from './sets.ts';
