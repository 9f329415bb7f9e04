// A flag names its criterion, its publication and its evidence, and that local protocol decides; it never gives an all-clear.

import type { Flag, HandoffInput } from '../input.ts';
import { plain, type Sentence } from '../text.ts';
import { shortCriterion } from './criterion-words.ts';
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

/** The publications of these by their short names, as they can be read aloud; the full citation stands in the SOAP note. */
export const publicationsOf = (flags: readonly Flag[]): readonly string[] => [
  ...new Set(flags.map((flag) => tidy(sourceParts(flag)[0].split(':')[0] ?? ''))),
];

/** The criterion and its reason; that local protocol decides is said once for all of them. */
export const criterionText = ({ text }: Flag): string =>
  tidy(tidy(text).replace(/\s*Local protocol decides$/, ''));

/** `Guideline; code` in its two halves; the second is empty where the source has no code of its own. */
function sourceParts({ source }: Flag): readonly [publication: string, code: string] {
  const cut = source.lastIndexOf('; ');
  return cut < 0 ? [tidy(source), ''] : [tidy(source.slice(0, cut)), tidy(source.slice(cut + 2))];
}

/** A publication that the flag before it has named is not named again. */
function metSentence(input: HandoffInput, flag: Flag, before: Flag | undefined): Sentence {
  const [publication, code] = sourceParts(flag);
  const again = before !== undefined && code !== '' && sourceParts(before)[0] === publication;
  const source = again ? `the same; ${code}` : tidy(flag.source);
  const level = flag.level === 'red' ? 'Red' : 'Yellow';
  return {
    text: `${level} criterion met: ${criterionText(flag)} [${source}]${evidenceMark(input, flag.evidence)}.`,
    entries: flag.evidence,
  };
}

/** Met criteria, red first; then those that cannot be decided; then who decides. */
export function flagSentences(input: HandoffInput): readonly Sentence[] {
  if (input.flags === undefined) return [plain('Criteria for triage were not worked out.')];
  const met = [...metFlags(input, 'red'), ...metFlags(input, 'yellow')];
  const open = input.flags.filter(({ state }) => state === 'unknown');
  return [
    ...met.map((flag, index) => metSentence(input, flag, met[index - 1])),
    ...(met.length === 0 ? [plain('No criterion is known to be met; that clears nothing.')] : []),
    ...(open.length === 0
      ? []
      : [
          {
            text: `Cannot be decided from what was said: ${open.map(shortCriterion).join('; ')}.`,
            entries: [...new Set(open.flatMap(({ evidence }) => evidence))],
          },
        ]),
  ];
}
