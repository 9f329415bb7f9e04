// The instant that a spoken time means, given when and where it was heard: never more than five minutes ahead of the talk.

import type { Clock, SpokenTime } from './spoken-time.ts';
import { instantsOf, offsetsOf } from './zone.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** How far a watch may run ahead of the device before a time is taken for yesterday's. A choice of ours, no source. */
const GRACE = 5 * MINUTE;

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
  return Math.max(...candidates.filter((at) => at <= heardAt + GRACE));
}

/**
 * Milliseconds since the epoch of a spoken time. A clock time is the latest such time not more than five minutes after
 * `heardAt`; without morning or evening said, the later of the two that fits. A zone that is not known (`isZone`) counts
 * as UTC.
 */
export function resolveTime(time: SpokenTime, heardAt: number, zone: string): number {
  if (time.kind === 'now') return heardAt;
  if (time.kind === 'ago') return heardAt - time.seconds * 1000;
  return latest(time, heardAt, zone);
}
