// An invented talk, run through the real grammar, parser, record and reckoning, as the reports made of it.

import { type HandoffInput, mist, radio, soap, textOf } from '../../src/handoff/index.ts';
import { readTalk } from '../../src/record/talk/index.ts';
import { endOf, examine } from '../../src/replay/examine.ts';
import { handoffInput } from '../../src/replay/record-json.ts';
import { realReader } from '../talk-case.ts';

const reader = realReader();

export interface Reports {
  readonly input: HandoffInput;
  readonly soap: string;
  readonly mist: string;
  /** the pieces as one text, without the words that end a piece */
  readonly radio: string;
}

/** What the reports say after these lines; the record begins on an invented morning at 09:10. */
export function reportsOf(...lines: readonly string[]): Reports {
  const talk = readTalk(['@start 2026-03-02T09:10:00+00:00', ...lines].join('\n'), {
    startedAt: 0,
    zone: 'UTC',
  });
  if (talk.kind === 'error') throw new Error(talk.why);
  const { state } = examine(reader, talk);
  const input = handoffInput(state, state.startedAt ?? '', endOf(talk));
  const pieces = radio(input).chunks.map(({ text }) => text.replace(/ (?:break|over)$/, ''));
  return { input, soap: textOf(soap(input)), mist: textOf(mist(input)), radio: pieces.join(' ') };
}
