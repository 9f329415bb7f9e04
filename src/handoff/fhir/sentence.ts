// One entry as one sentence, as the other reports tell it, with its time and with the mark of what is unconfirmed.

import type { Entry } from '../../record/entry.ts';
import { clock, type Day, readingText, vitalName } from '../../timeline/index.ts';
import { careSentence } from '../sentences/care.ts';
import { csmSentences } from '../sentences/csm.ts';
import { findingSentence } from '../sentences/finding.ts';
import { historySentence } from '../sentences/history.ts';
import { keptSentences } from '../sentences/kept.ts';
import { capital } from '../sentences/list.ts';
import { placeName } from '../sentences/place.ts';
import { markOf } from '../sentences/trust.ts';
import type { Sentence } from '../text.ts';

/** `Left forearm: looked at or felt, at 14:06.` Nothing is said of what was or was not found. */
export function visitSentence(entry: Extract<Entry, { kind: 'visit' }>, day: Day): Sentence {
  const place = capital(placeName(entry));
  return {
    text: `${place}: looked at or felt, at ${clock(entry.at, day)}${markOf([entry])}.`,
    entries: [entry.id],
  };
}

/** The sentence of a standing entry. */
export function sentenceOf(entry: Entry, day: Day): string {
  switch (entry.kind) {
    case 'finding':
      return findingSentence({ entries: [entry], timed: true }, day).text;
    case 'csm':
      return csmSentences([entry], day)[0]?.text ?? '';
    case 'vital':
      return `${vitalName(entry.vital)} ${readingText(entry)}, at ${clock(entry.at, day)}${markOf([entry])}.`;
    case 'history':
      return historySentence(entry, day).text;
    case 'care':
      return careSentence(entry, day).text;
    case 'visit':
      return visitSentence(entry, day).text;
    case 'mark':
    case 'note':
      return keptSentences([entry], day)[0]?.text ?? '';
  }
}
