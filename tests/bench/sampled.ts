// Utterances sampled from the grammar with a seed, as many as are asked for, so that every run reads the same ones.

import { careSentences } from '../parse/round-trip/care.ts';
import { csmSentences } from '../parse/round-trip/csm.ts';
import { findingSentences } from '../parse/round-trip/findings.ts';
import { historySentences } from '../parse/round-trip/history.ts';
import { sampler } from '../parse/round-trip/sampler.ts';
import { turnSentences } from '../parse/round-trip/turns.ts';
import { vitalSentences } from '../parse/round-trip/vitals.ts';
import { seeded } from '../seeded.ts';

const FAMILIES = [
  findingSentences,
  csmSentences,
  vitalSentences,
  historySentences,
  careSentences,
  turnSentences,
];

export function sampledLines(count: number): readonly string[] {
  const sampling = sampler(seeded(20261125));
  const lines: string[] = [];
  while (lines.length < count)
    for (const family of FAMILIES) lines.push(...family(sampling).flatMap((sentence) => sentence.lines));
  return lines.slice(0, count);
}
