// Promises the times that can be read from a given word on, the instant each means, and ISO 8601 in both directions.

export { formatIso, parseIso } from './iso.ts';
export { isPlainClock } from './past-to.ts';
export { readTimes } from './read-times.ts';
export { hoursBack, isAhead, resolveTime } from './resolve.ts';
export type { SpokenTime, TimeReading } from './spoken-time.ts';
export { tellsTime } from './tells-time.ts';
export { isZone } from './zone.ts';
