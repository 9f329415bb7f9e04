// Reads what an exported file holds, once it is decrypted: each record whole and of a right shape, or named with its faults.

import * as v from 'valibot';
import { beginChain, type Head, linkAfter, verifyLog } from '../../chain/index.ts';
import { sha256 } from '../bytes.ts';
import { bundleShape, type ExportedRecord, eventShape, recordShape } from './shape.ts';

export type BundleRead =
  | {
      readonly kind: 'bundle';
      readonly records: readonly ExportedRecord[];
      /** one sentence for each fault of a record that is not taken, with its place in the file */
      readonly faults: readonly string[];
    }
  | { readonly kind: 'refused'; readonly why: string };

const SHOWN = 5;

/** `payload.heardAt: is no time` */
const inWords = (issue: v.BaseIssue<unknown>): string =>
  `${v.getDotPath(issue) ?? 'the whole'}: ${issue.message}`;

/** The records of an export's JSON text. A record with a fault is left out whole, and every other one is read. */
export async function readBundle(json: string): Promise<BundleRead> {
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    return { kind: 'refused', why: 'What is in the file is no JSON.' };
  }
  const bundle = v.safeParse(bundleShape, value);
  if (!bundle.success)
    return { kind: 'refused', why: `The file is no export: ${bundle.issues.map(inWords).join('; ')}` };
  const records: ExportedRecord[] = [];
  const faults: string[] = [];
  for (const [index, one] of bundle.output.records.entries()) {
    const read = v.safeParse(recordShape, one);
    const found = read.success ? await faultsOf(read.output) : read.issues.map(inWords);
    if (read.success && found.length === 0) records.push(read.output);
    else {
      faults.push(...found.slice(0, SHOWN).map((fault) => `record ${index + 1}, ${fault}`));
      if (found.length > SHOWN) faults.push(`record ${index + 1}: ${found.length - SHOWN} more faults`);
    }
  }
  return { kind: 'bundle', records, faults };
}

/** The end of a log that holds these events and no other. */
export async function endOf(record: string, events: readonly object[]): Promise<Head> {
  let hash = await beginChain(record, sha256);
  for (const event of events) hash = await linkAfter(hash, event, sha256);
  return { count: events.length, hash };
}

/** The rows as a log; a row that does not say what it follows follows the one before it, and the end tells whether that is so. */
async function chained(record: string, rows: ExportedRecord['rows']) {
  const log: { place: number; kind: 'event'; event: unknown; previous: string }[] = [];
  let hash = await beginChain(record, sha256);
  for (const { place, event, previous = hash } of rows) {
    log.push({ place, kind: 'event', event, previous });
    hash = await linkAfter(previous, event, sha256);
  }
  return log;
}

async function faultsOf({ facts, rows, head }: ExportedRecord): Promise<readonly string[]> {
  const shape = rows.flatMap(({ event, place }) => {
    const read = v.safeParse(eventShape(String(event.kind)), event);
    return read.success ? [] : read.issues.map((issue) => `event ${place}, ${inWords(issue)}`);
  });
  if (shape.length > 0) return shape;
  const log = await chained(facts.id, rows);
  const { faults } = await verifyLog(facts.id, log, head, sha256);
  // What was damaged when it was exported is damaged still; its whole part is worth having. Altered events are not.
  return faults
    .filter(({ fault }) => fault === 'out-of-chain' || fault === 'other-end')
    .map(
      ({ place }) => `event ${place}, hash: it was altered after it was exported, or is not of this record`,
    );
}
