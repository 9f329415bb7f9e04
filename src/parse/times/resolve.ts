// The instant that a spoken time means, given when and where it was heard: never more than an hour ahead of the talk.

import type { Clock, SpokenTime } from './spoken-time.ts';
import { instantsOf, offsetsOf } from './zone.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/**
 * How far ahead of the talk a time may be before it is taken for an earlier one. Two watches differ, and a slip of minutes is
 * likelier than a tourniquet that was put on a day ago; what is ahead is asked about. A choice of ours, no source.
 */
const GRACE = HOUR;

/** A time so long ago gives way to one that is a little ahead. */
const LONG_AGO = 20 * HOUR;

/** How far a watch may run ahead of the device unasked. A choice of ours, no source. */
const UNASKED = 5 * MINUTE;

/** True where a time said at `heardAt` is still to come by more than two watches differ. */
export const isAhead = (at: number, heardAt: number): boolean => at > heardAt + UNASKED;

/** What was given or measured so long ago is asked about where only the half of the day makes it so. */
const FAR = 6 * HOUR;

/**
 * The whole hours between a clock time and the talk where that time was said without morning or evening and lies so far back
 * that the other half of the day may be meant; null where nothing is to be asked. A choice of ours, no source.
 */
export function hoursBack(time: SpokenTime, at: number, heardAt: number): number | null {
  const isOpen = time.kind === 'clock' && time.half === undefined && !time.twentyFour;
  return isOpen && heardAt - at > FAR ? Math.floor((heardAt - at) / HOUR) : null;
}

function hoursOf({ hour, half, twentyFour }: Clock): readonly number[] {
  if (half !== undefined) return [(hour % 12) + (half === 'pm' ? 12 : 0)];
  return twentyFour ? [hour] : [hour % 12, (hour % 12) + 12];
}

function latest(time: Clock, heardAt: number, zone: string): number {
  const offsetAt = offsetsOf(zone) ?? (() => 0);
  const local = heardAt + offsetAt(heardAt) * MINUTE;
  const midnight = Math.floor(local / DAY) * DAY;
  const candidates = [-1, 0, 1].flatMap((day) =>
    hoursOf(time).flatMap((hour) =>
      instantsOf(midnight + day * DAY + hour * HOUR + time.minute * MINUTE, offsetAt),
    ),
  );
  const past = Math.max(...candidates.filter((at) => at <= heardAt + UNASKED));
  const ahead = Math.min(...candidates.filter((at) => at > heardAt + UNASKED));
  return heardAt - past > LONG_AGO && ahead <= heardAt + GRACE ? ahead : past;
}

/** The latest time with these minutes past its hour, up to the talk. */
function latestMinute(minute: number, heardAt: number, zone: string): number {
  const offset = (offsetsOf(zone)?.(heardAt) ?? 0) * MINUTE;
  const hour = Math.floor((heardAt + offset) / HOUR) * HOUR - offset;
  const at = hour + minute * MINUTE;
  return at <= heardAt + UNASKED ? at : at - HOUR;
}

/**
 * Milliseconds since the epoch of a spoken time. A clock time is the latest such time up to `heardAt`, or one within the
 * next hour where the other would be most of a day ago; without morning or evening said, the later of the two that fits. A
 * zone that is not known (`isZone`) counts as UTC.
 */
export function resolveTime(time: SpokenTime, heardAt: number, zone: string): number {
  if (time.kind === 'now') return heardAt;
  if (time.kind === 'ago') return heardAt - time.seconds * 1000;
  if (time.kind === 'minute') return latestMinute(time.minute, heardAt, zone);
  return latest(time, heardAt, zone);
}
