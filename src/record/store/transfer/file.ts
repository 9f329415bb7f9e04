// One file for one record or all of them: sealed by a passphrase of its own, or open where a person wants it so.

import * as v from 'valibot';
import { judgePassphrase } from '../../crypt/index.ts';
import { type Bytes, base64, fromBase64, random, textOf, utf8 } from '../bytes.ts';
import { type RecordFacts, readLog } from '../log/index.ts';
import { placeOf, rowKey } from '../places.ts';
import { type Keys, unseal } from '../sealed.ts';
import type { Shelf } from '../shelf.ts';
import { keyFromPassphrase, ROUNDS } from '../vault/wrap.ts';
import { type BundleRead, endOf, readBundle } from './read-bundle.ts';
import { type ExportedRecord, envelopeShape } from './shape.ts';
import { squeeze, unsqueeze } from './squeeze.ts';

/** The form that is written; the one before it, in which nothing was squeezed, is read too. */
const SCHEMA = 'fieldsay-export/2';

const params = (schema: string, iv: Bytes): AesGcmParams => ({
  name: 'AES-GCM',
  iv,
  additionalData: utf8(schema),
});

/** A record with its log as the page holds it. */
export interface HeldRecord {
  readonly facts: RecordFacts;
  readonly summary: Readonly<Record<string, unknown>>;
  readonly events: readonly object[];
}

export type Exported =
  | { readonly kind: 'file'; readonly text: string; readonly records: number }
  | { readonly kind: 'refused'; readonly why: string };

async function exportedRecord(shelf: Shelf, keys: Keys, id: string): Promise<ExportedRecord | null> {
  const [{ record, verdict }, stored] = await Promise.all([
    readLog(shelf, keys, id),
    shelf.under(rowKey(id, 0).slice(0, 2)),
  ]);
  if (record === null) return null;
  const rows = await Promise.all(
    stored.map(async ({ key, value }) => {
      const opened = await unseal(keys, placeOf(key), value);
      const row =
        opened.kind === 'value' ? (opened.value as Omit<ExportedRecord['rows'][number], 'place'>) : null;
      return row === null ? [] : [{ place: Number(key[2]), event: row.event, previous: row.previous }];
    }),
  );
  return { facts: record.facts, summary: record.summary, head: verdict.end, rows: rows.flat() };
}

/** The named records as one file's text; sound is never in it. Damaged rows are not either: they have a file of their own. */
export async function exportRecords(
  shelf: Shelf,
  keys: Keys,
  ids: readonly string[],
  passphrase: string,
): Promise<Exported> {
  const judged = judgePassphrase(passphrase);
  if (judged.kind === 'refused') return judged;
  const found = await Promise.all(ids.map((id) => exportedRecord(shelf, keys, id)));
  const records = found.filter((one) => one !== null);
  return { kind: 'file', text: await sealed(bundleText(records), passphrase), records: records.length };
}

const bundleText = (records: readonly ExportedRecord[]): string =>
  JSON.stringify({ schema: 'fieldsay-records/1', records });

async function sealed(plain: string, passphrase: string): Promise<string> {
  const [salt, iv] = [random(16), random(12)];
  const key = await keyFromPassphrase(passphrase, salt, ROUNDS);
  const data = new Uint8Array(await crypto.subtle.encrypt(params(SCHEMA, iv), key, await squeeze(plain)));
  return JSON.stringify({
    schema: SCHEMA,
    key: 'PBKDF2-HMAC-SHA-256',
    rounds: ROUNDS,
    salt: base64(salt),
    iv: base64(iv),
    data: base64(data),
  });
}

/**
 * A record as it is in memory, as a file's text; it need not be on the disk. An empty passphrase leaves it open to
 * whoever has the file. Its events name no hash but the last: the chain is worked out again from the events themselves.
 */
export async function exportHeld(held: HeldRecord, passphrase: string): Promise<Exported> {
  if (passphrase.trim() !== '') {
    const judged = judgePassphrase(passphrase);
    if (judged.kind === 'refused') return judged;
  }
  const { facts, summary, events } = held;
  const { count, hash } = await endOf(facts.id, events);
  const rows = events.map((event, index) => ({ place: index + 1, event: { ...event } }));
  const plain = bundleText([{ facts: { ...facts }, summary, head: { count, hash }, rows }]);
  const text = passphrase.trim() === '' ? plain : await sealed(plain, passphrase);
  return { kind: 'file', text, records: 1 };
}

/** True for a file that asks for a passphrase. */
export function isSealed(text: string): boolean {
  try {
    return v.safeParse(envelopeShape, JSON.parse(text)).success;
  } catch {
    return false;
  }
}

/** What a file holds, or in one sentence why it cannot be read. Never throws, whatever the file. */
export async function readExport(text: string, passphrase: string): Promise<BundleRead> {
  const refused = (why: string): BundleRead => ({ kind: 'refused', why });
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refused('The file is no export: it is no JSON, or was cut off.');
  }
  // One that was written open says so itself.
  if (v.safeParse(v.looseObject({ schema: v.literal('fieldsay-records/1') }), value).success)
    return readBundle(text);
  const read = v.safeParse(envelopeShape, value);
  if (!read.success) {
    const [issue] = read.issues;
    return refused(`The file is no export: ${v.getDotPath(issue) ?? 'the whole'}: ${issue.message}`);
  }
  const [salt, iv, data] = [read.output.salt, read.output.iv, read.output.data].map(fromBase64);
  if (salt == null || iv == null || data == null || iv.length !== 12)
    return refused('The file is no export: its salt, iv or data are no bytes.');
  const key = await keyFromPassphrase(passphrase, salt, read.output.rounds);
  const { schema } = read.output;
  try {
    const opened = new Uint8Array(await crypto.subtle.decrypt(params(schema, iv), key, data));
    const plain = schema === SCHEMA ? await unsqueeze(opened) : textOf(opened);
    return plain === null ? refused('What is in the file cannot be read.') : await readBundle(plain);
  } catch {
    return refused('The passphrase is not that of the file, or the file was altered.');
  }
}
