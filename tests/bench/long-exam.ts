// A long invented examination for benchmarks: each site, twelve sets of vitals, four rounds of the limbs' ends.

import type { Entry } from '../../src/record/entry.ts';
import { FINDINGS, isPaired, SITES } from '../../src/terms/index.ts';
import {
  age,
  breaths,
  csmAllFour,
  denied,
  entry,
  found,
  gcs,
  minute,
  pressure,
  pulse,
  saturation,
  told,
} from '../clinical/build.ts';

const NOTES = 25;

/** About 500 entries, most of them denials, as an examination is. */
export function longExam(): readonly Entry[] {
  const body = SITES.flatMap((site, index) =>
    FINDINGS.slice(0, 6).map((finding, turn) => {
      const side = isPaired(site) ? 'both' : null;
      const facts = { at: minute(index) };
      return (index * 6 + turn) % 17 === 0
        ? found(site, side, finding, facts)
        : denied(site, side, finding, facts);
    }),
  );
  const sets = Array.from({ length: 12 }, (_, set) => [
    pulse(80 + set * 3, set * 5),
    pressure(126 - set * 3, 80 - set, set * 5),
    breaths(16 + set, set * 5),
    saturation(98 - set, false, set * 5),
    gcs(4, 5, 6, set * 5),
  ]).flat();
  const ends = [0, 15, 30, 45].flatMap((at) => csmAllFour(at));
  const notes = Array.from({ length: NOTES }, (_, turn) =>
    entry({ kind: 'note', text: `the rope bag number ${turn} is by the tree` }, { at: minute(turn) }),
  );
  return [age(42), told('mechanism', 'fell twenty feet'), ...body, ...sets, ...ends, ...notes];
}
