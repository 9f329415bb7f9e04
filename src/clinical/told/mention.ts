// Whether something was told: said, denied, or only hinted at in a note, each with its entries.

import type { Entry } from '../../record/entry.ts';
import type { Topic } from '../../terms/index.ts';
import { type Answer, no, unknown, yes } from '../answer.ts';
import type { Chart } from '../chart.ts';

export interface Mention {
  readonly said: readonly Entry[];
  readonly denied: readonly Entry[];
  /** words in a note or a mark: they may be anyone's, so they only raise the question */
  readonly hinted: readonly Entry[];
}

const NEGATED = /\b(?:no|not|never|without|denies|denied|nor|[a-z]+n't)(?:\s+[a-z'-]+){0,2}\s*$/i;
// A negation does not reach over these.
const STOPS = /[.,;:!?]|\b(?:and|but|except|however|then)\b/gi;

/** Whether a negation reaches over what begins at this place of the text. */
export const isNegatedAt = (text: string, at: number): boolean =>
  NEGATED.test(text.slice(0, at).split(STOPS).at(-1) ?? '');

/** Did the text say the thing, or say that it was not so? Null where it does not name it. */
export function saidInText(text: string, pattern: RegExp): boolean | null {
  // Most texts do not name it at all, which the pattern as it stands finds out soonest.
  if (!pattern.test(text.toLowerCase())) return null;
  let denied = false;
  for (const match of text.matchAll(new RegExp(pattern.source, 'gi'))) {
    if (!isNegatedAt(text, match.index)) return true;
    denied = true;
  }
  return denied ? false : null;
}

/** The notes and marks as one text; no pattern reaches over a full stop. */
const allWords = (chart: Chart): string => chart.words.map((entry) => entry.text.toLowerCase()).join(' . ');

/** Looks for the pattern in what was told under these topics; in notes and marks it is only hinted. */
export function mentionOf(chart: Chart, topics: readonly Topic[], pattern: RegExp): Mention {
  const said: Entry[] = [];
  const denied: Entry[] = [];
  const hinted: Entry[] = [];
  // One look at all of the notes spares most patterns a look at each.
  if (pattern.test(chart.ask(allWords)))
    for (const entry of chart.words) if (saidInText(entry.text, pattern) === true) hinted.push(entry);
  for (const topic of topics)
    for (const entry of chart.told(topic)) {
      const told = saidInText(entry.text, pattern);
      if (told === null) continue;
      (entry.present === false || !told ? denied : said).push(entry);
    }
  return { said, denied, hinted };
}

/** A mention as an answer; what was both said and denied is said, and what was not named is unknown. */
export function answerOf(mention: Mention, question: string, because: string): Answer {
  if (mention.said.length > 0) return yes(mention.said, because);
  if (mention.hinted.length > 0) return unknown([question], mention.hinted);
  if (mention.denied.length > 0) return no(mention.denied, `denied: ${because}`);
  return unknown([question]);
}

/** The topics under which the event itself is told. */
export const EVENT_TOPICS: readonly Topic[] = ['mechanism', 'events', 'chief-complaint', 'onset', 'time'];
