// A time is shown as the clock on the wall showed it there, with the date only where it is not the day of the start.

/** `2026-05-03`, in the offset of the time it was taken from */
export type Day = string;

/** The calendar day of an ISO time, in that time's own offset. */
export const dayOf = (iso: string): Day => iso.slice(0, 10);

/** The minute an ISO time falls in, fit to compare two times of one record. */
export const minuteOf = (iso: string): number => Math.floor(Date.parse(iso) / 60_000);

/** True where both fall in one minute. */
export const isSameMinute = (one: string, other: string): boolean =>
  one === other || minuteOf(one) === minuteOf(other);

/** `14:06`, or `2026-05-04 01:10` where the day is another than `day`. */
export const clock = (iso: string, day: Day): string =>
  dayOf(iso) === day ? iso.slice(11, 16) : `${dayOf(iso)} ${iso.slice(11, 16)}`;
