// AVPU as it was said; it stands beside the GCS and is never converted into one.

import { type Chart, vitalsOf } from '../chart.ts';
import type { Source } from '../source.ts';
import { type Score, scoreOf } from './score.ts';

export const AVPU_SOURCE: Source = {
  cite: 'AVPU as in the NEWS2 chart and NEMSIS eVitals.26; not converted to GCS: McNarry AF, Goldhill DR. Anaesthesia 2004;59:34-37',
  mark: 'read',
  note: 'the comparison study from memory',
};

const WORDS = { A: 'alert', V: 'responds to voice', P: 'responds to pain', U: 'unresponsive' } as const;

/** The latest AVPU in words. It has no number: `value` is always null. */
export function responsivenessScore(chart: Chart): Score {
  const latest = vitalsOf(chart, 'responsiveness').at(-1);
  if (latest === undefined)
    return scoreOf('responsiveness', null, 'AVPU not recorded', [], AVPU_SOURCE, ['AVPU']);
  const { avpu, orientation } = latest.value;
  const words = [
    ...(avpu === undefined ? [] : [`${avpu}, ${WORDS[avpu]}`]),
    ...(orientation === undefined ? [] : [`oriented times ${orientation}`]),
  ];
  const missing = avpu === undefined ? ['AVPU'] : [];
  return scoreOf('responsiveness', null, `AVPU ${words.join(', ')}`, [latest], AVPU_SOURCE, missing);
}
