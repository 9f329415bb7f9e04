// Instants as ISO 8601 text with seconds and an offset, written and read back without loss of a second.

import { offsetsOf } from './zone.ts';

const MINUTE = 60_000;
const ISO = /^(\d{4}-\d\d-\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:[.,]\d+)?)?(Z|[+-]\d\d:?\d\d)$/i;

const two = (value: number): string => String(value).padStart(2, '0');

const offsetText = (minutes: number): string => {
  const size = Math.abs(minutes);
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
};

/** `2026-05-03T14:02:00-06:00`: local time in the zone, to the second, with its offset. An unknown zone counts as UTC. */
export function formatIso(epochMs: number, zone: string): string {
  const offset = offsetsOf(zone)?.(epochMs) ?? 0;
  return new Date(epochMs + offset * MINUTE).toISOString().slice(0, 19) + offsetText(offset);
}

/** The instant and the offset (`-06:00`, itself a zone) of an ISO 8601 date and time; null where it is not one. */
export function parseIso(text: string): { readonly epochMs: number; readonly offset: string } | null {
  const [, date, hour, minute, second = '00', zone] = ISO.exec(text.trim()) ?? [];
  if (date === undefined || zone === undefined) return null;
  const offset = offsetsOf(zone)?.(0);
  const asUtc = `${date}T${hour}:${minute}:${second}`;
  const local = Date.parse(`${asUtc}Z`);
  // Date.parse rolls "February 30" over in some engines; what comes back must be what went in.
  if (offset === undefined || Number.isNaN(local) || !new Date(local).toISOString().startsWith(asUtc))
    return null;
  return { epochMs: local - offset * MINUTE, offset: offsetText(offset) };
}
