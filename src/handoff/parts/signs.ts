// Signs: each vital by its readings or its trend, those not recorded, and the criteria that are met.

import { type Day, series } from '../../timeline/index.ts';
import type { Flag, HandoffInput } from '../input.ts';
import { shortCriterion } from '../sentences/criterion-words.ts';
import { evidenceMark, metFlags, publicationsOf } from '../sentences/flags.ts';
import { capital } from '../sentences/list.ts';
import { missingSigns } from '../sentences/signs.ts';
import { shortSeries } from '../sentences/vitals.ts';
import { plain, type Sentence } from '../text.ts';

/** `Red criterion met: heart rate above systolic pressure (unconfirmed).` Its full source stands in the SOAP note. */
export function metCriteria(input: HandoffInput, level: Flag['level']): readonly Sentence[] {
  return metFlags(input, level).map((flag) => ({
    text: `${capital(level)} criterion met: ${shortCriterion(flag)}${evidenceMark(input, flag.evidence)}.`,
    entries: flag.evidence,
  }));
}

export function signs(input: HandoffInput, day: Day): readonly Sentence[] {
  const met = [...metCriteria(input, 'red'), ...metCriteria(input, 'yellow')];
  const from = publicationsOf([...metFlags(input, 'red'), ...metFlags(input, 'yellow')]).join('; ');
  return [
    ...series(input.entries).map((one) => shortSeries(one, day)),
    ...missingSigns(input.entries),
    ...met,
    ...(met.length === 0
      ? []
      : [plain(`Source of the criteria: ${from}.`), plain('Local protocol decides.')]),
  ];
}
