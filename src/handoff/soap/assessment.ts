// Assessment: the problems that were found and the published criteria they meet; it names nothing that was not said.

import type { Day } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { problemsTold } from '../problems.ts';
import { flagSentences } from '../sentences/flags.ts';
import { written } from '../sentences/told.ts';
import { type HandoffLine, heading, line, plain } from '../text.ts';

export function assessment(input: HandoffInput, day: Day): readonly HandoffLine[] {
  const problems = problemsTold(input, day).map(written);
  return [
    heading('ASSESSMENT'),
    ...(problems.length === 0 ? [plain('No present finding recorded; that clears nothing.')] : problems).map(
      line,
    ),
    ...flagSentences(input).map(line),
    line(plain('Local protocol decides.')),
  ];
}
