// Local clock time to the instant and back, in an IANA zone or a fixed offset, across changes of the clocks.

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
const FIXED = /^(?:UTC|GMT|Z)?(?:([+-])(\d{2}):?(\d{2}))?$/i;

/** Minutes east of Greenwich at an instant (milliseconds since the epoch). */
export type OffsetAt = (epochMs: number) => number;

function fixedOffset(zone: string): number | null {
  const found = zone === '' ? null : FIXED.exec(zone);
  if (found === null) return null;
  const [, sign, hours = '0', minutes = '0'] = found;
  const size = Number(hours) * 60 + Number(minutes);
  if (Number(hours) > 23 || Number(minutes) > 59) return null;
  return sign === '-' ? -size : size;
}

function formatterOf(zone: string): Intl.DateTimeFormat | null {
  try {
    return new Intl.DateTimeFormat('en-US', {
      timeZone: zone,
      calendar: 'iso8601',
      numberingSystem: 'latn',
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    });
  } catch {
    return null; // Intl has no other way to say that it does not know a zone
  }
}

/** The offsets of a zone, or null where `zone` is neither an IANA name that this machine knows nor "+hh:mm". */
export function offsetsOf(zone: string): OffsetAt | null {
  const fixed = fixedOffset(zone);
  if (fixed !== null) return () => fixed;
  const formatter = formatterOf(zone);
  if (formatter === null) return null;
  return (epochMs) => {
    const part = Object.fromEntries(
      formatter.formatToParts(epochMs).map(({ type, value }) => [type, Number(value)]),
    );
    const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = part;
    const local = Date.UTC(year, month - 1, day, hour, minute, second);
    return Math.round((local - Math.floor(epochMs / 1000) * 1000) / MINUTE);
  };
}

/** True for a zone that clock times can be read in. */
export const isZone = (zone: string): boolean => offsetsOf(zone) !== null;

/**
 * The instants at which clocks show a local time (given as if it were UTC, in milliseconds): one, or two in the hour that
 * comes twice. In the hour that is skipped, the one that a watch not yet put forward would mean.
 */
export function instantsOf(local: number, offsetAt: OffsetAt): readonly number[] {
  const before = offsetAt(local - DAY);
  const offsets = new Set([before, offsetAt(local + DAY)]);
  const shown = [...offsets]
    .map((offset) => ({ offset, at: local - offset * MINUTE }))
    .filter(({ offset, at }) => offsetAt(at) === offset)
    .map(({ at }) => at);
  return shown.length > 0 ? shown : [local - before * MINUTE];
}
