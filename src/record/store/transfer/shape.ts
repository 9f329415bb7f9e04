// The shape of an exported record, field by field, so that an import can say which field of which event is wrong.

import * as v from 'valibot';
import { EVENT_KINDS, FORMAT } from '../../event.ts';

const text = v.string();
const isoTime = v.pipe(text, v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d/, 'is no time as ISO 8601 writes it'));
const count = v.pipe(v.number(), v.integer(), v.minValue(1));
const texts = v.array(text);
const known = v.record(text, v.picklist(['carried', 'inferred']));

/** What an entry states; its own fields are those of the contract and differ by kind. */
const statement = v.looseObject({
  kind: v.picklist(['finding', 'csm', 'vital', 'history', 'care', 'visit', 'mark', 'note']),
});

const entered = v.looseObject({
  id: text,
  statement,
  at: isoTime,
  heardAt: isoTime,
  heard: text,
  known,
  doubt: texts,
  utterance: v.nullable(text),
  group: text,
});

/** What each kind of event must have; a kind that is not here must only have a payload. */
const PAYLOADS = {
  started: v.looseObject({ startedAt: isoTime, zone: text }),
  utterance: v.looseObject({ text, heardAt: isoTime, zone: text, alternatives: v.optional(texts) }),
  entered,
  corrected: v.looseObject({ targets: texts, replacements: v.array(entered) }),
  struck: v.looseObject({ entries: texts, by: text }),
  confirmed: v.looseObject({ entries: texts, by: text }),
  filed: v.looseObject({
    by: text,
    file: v.looseObject({
      incident: v.optional(text),
      patient: v.optional(count),
      label: v.optional(text),
      tag: v.optional(text),
      place: v.optional(text),
      closed: v.optional(v.boolean()),
    }),
  }),
} as const;

const facts = {
  format: v.pipe(
    count,
    v.maxValue(FORMAT, `is later than ${FORMAT}, which is the latest that this version reads`),
  ),
  id: v.pipe(text, v.nonEmpty()),
  device: text,
  seq: count,
  time: isoTime,
};

const isListed = (kind: string): kind is keyof typeof PAYLOADS => kind in PAYLOADS;

/** The schema of one event of this kind. */
export function eventShape(kind: string) {
  const payload = isListed(kind) ? PAYLOADS[kind] : v.looseObject({});
  return v.looseObject({ ...facts, kind: v.picklist(EVENT_KINDS), payload });
}

export const recordShape = v.object({
  facts: v.object({
    id: v.pipe(text, v.nonEmpty(), v.maxLength(100)),
    kind: v.picklist(['live', 'invented', 'opened']),
    title: text,
    startedAt: isoTime,
  }),
  summary: v.record(text, v.unknown()),
  head: v.object({ count: v.pipe(v.number(), v.integer(), v.minValue(0)), hash: text }),
  rows: v.array(v.object({ place: count, event: v.looseObject({}), previous: v.optional(text) })),
});

export type ExportedRecord = v.InferOutput<typeof recordShape>;

export const bundleShape = v.object({
  schema: v.literal('fieldsay-records/1'),
  records: v.array(v.unknown()),
});

/** The file itself: who does not know the passphrase reads nothing of it but this. */
export const envelopeShape = v.object({
  schema: v.picklist(['fieldsay-export/1', 'fieldsay-export/2']),
  key: v.literal('PBKDF2-HMAC-SHA-256'),
  rounds: v.pipe(v.number(), v.integer(), v.minValue(100_000), v.maxValue(10_000_000)),
  salt: v.pipe(text, v.base64()),
  iv: v.pipe(text, v.base64()),
  data: v.pipe(text, v.base64()),
});
