// A flag names its criterion, its publication and its evidence, and that local protocol decides; it never gives an all-clear.

import type { Flag, HandoffInput } from '../input.ts';
import { plain, type Sentence } from '../text.ts';
import { tidy } from './list.ts';
import { markOf } from './trust.ts';

/** The mark of something worked out from these entries. */
export function evidenceMark(input: HandoffInput, evidence: readonly string[]): string {
  return markOf(
    input.entries.filter(({ id }) => evidence.includes(id)).map((entry) => ({ ...entry, known: {} })),
  );
}

export const metFlags = (input: HandoffInput, level: Flag['level']): readonly Flag[] =>
  (input.flags ?? []).filter((flag) => flag.state === 'met' && flag.level === level);

const metSentence = (input: HandoffInput, flag: Flag): Sentence => ({
  text: `${flag.level === 'red' ? 'Red' : 'Yellow'} criterion met: ${tidy(flag.text)} [${tidy(flag.source)}]${evidenceMark(input, flag.evidence)}.`,
  entries: flag.evidence,
});

/** Met criteria, red first; then those that cannot be decided; then who decides. */
export function flagSentences(input: HandoffInput): readonly Sentence[] {
  if (input.flags === undefined) return [plain('Criteria for triage were not worked out.')];
  const met = [...metFlags(input, 'red'), ...metFlags(input, 'yellow')];
  const open = input.flags.filter(({ state }) => state === 'unknown');
  return [
    ...met.map((flag) => metSentence(input, flag)),
    ...(met.length === 0 ? [plain('No criterion is known to be met; that clears nothing.')] : []),
    ...(open.length === 0
      ? []
      : [
          {
            text: `Cannot be decided from what was said: ${open.map(({ text }) => tidy(text)).join('; ')}.`,
            entries: [...new Set(open.flatMap(({ evidence }) => evidence))],
          },
        ]),
  ];
}
