// A section of a written order: its heading, then its sentences, or that nothing of it is recorded.

import { type HandoffLine, heading, line, plain, type Sentence } from '../text.ts';

/** The section, which is never left out: an empty one says `none`. */
export const section = (
  title: string,
  sentences: readonly Sentence[],
  none = 'Not recorded.',
): readonly HandoffLine[] => [
  heading(title),
  ...(sentences.length === 0 ? [plain(none)] : sentences).map(line),
];

/** The section only where there is something to say in it. */
export const sectionIfSaid = (title: string, sentences: readonly Sentence[]): readonly HandoffLine[] =>
  sentences.length === 0 ? [] : section(title, sentences);
