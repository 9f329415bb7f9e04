// The part of a log that cannot be read, as a file for inspection: the rows as they lie, in base64, and what is wrong.

import type { Verdict } from '../../chain/index.ts';
import { base64 } from '../bytes.ts';
import { isSealed } from '../sealed.ts';
import type { Placed } from '../shelf.ts';

const asText = ({ key, value }: Placed): unknown =>
  isSealed(value)
    ? { key, sealed: { key: value.key, iv: base64(value.iv), data: base64(value.data) } }
    : { key, value: value instanceof Uint8Array ? { bytes: base64(new Uint8Array(value)) } : value };

/** JSON text. Sealed bytes stay sealed in it. */
export const damagedFile = (record: string, verdict: Verdict, damaged: readonly Placed[]): string =>
  JSON.stringify(
    {
      schema: 'fieldsay-damaged/1',
      record,
      faults: verdict.faults,
      lastWhole: verdict.lastWhole,
      rows: damaged.map(asText),
    },
    null,
    1,
  );
