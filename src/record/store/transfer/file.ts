// One encrypted file for one record or all of them; its passphrase is its own and need not be the device's.

import * as v from 'valibot';
import { judgePassphrase } from '../../crypt/index.ts';
import { type Bytes, base64, fromBase64, random, textOf, utf8 } from '../bytes.ts';
import { readLog } from '../log/index.ts';
import { placeOf, rowKey } from '../places.ts';
import { type Keys, unseal } from '../sealed.ts';
import type { Shelf } from '../shelf.ts';
import { keyFromPassphrase, ROUNDS } from '../vault/wrap.ts';
import { type BundleRead, readBundle } from './read-bundle.ts';
import { type ExportedRecord, envelopeShape } from './shape.ts';

const params = (iv: Bytes): AesGcmParams => ({
  name: 'AES-GCM',
  iv,
  additionalData: utf8('fieldsay-export/1'),
});

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
  const [salt, iv] = [random(16), random(12)];
  const key = await keyFromPassphrase(passphrase, salt, ROUNDS);
  const plain = utf8(JSON.stringify({ schema: 'fieldsay-records/1', records }));
  const data = new Uint8Array(await crypto.subtle.encrypt(params(iv), key, plain));
  const envelope = {
    schema: 'fieldsay-export/1',
    key: 'PBKDF2-HMAC-SHA-256',
    rounds: ROUNDS,
    salt: base64(salt),
    iv: base64(iv),
    data: base64(data),
  };
  return { kind: 'file', text: JSON.stringify(envelope), records: records.length };
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
  const read = v.safeParse(envelopeShape, value);
  if (!read.success) {
    const [issue] = read.issues;
    return refused(`The file is no export: ${v.getDotPath(issue) ?? 'the whole'}: ${issue.message}`);
  }
  const [salt, iv, data] = [read.output.salt, read.output.iv, read.output.data].map(fromBase64);
  if (salt == null || iv == null || data == null || iv.length !== 12)
    return refused('The file is no export: its salt, iv or data are no bytes.');
  const key = await keyFromPassphrase(passphrase, salt, read.output.rounds);
  try {
    return await readBundle(textOf(await crypto.subtle.decrypt(params(iv), key, data)));
  } catch {
    return refused('The passphrase is not that of the file, or the file was altered.');
  }
}
