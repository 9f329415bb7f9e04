// What the reports of a demonstration examination (invented) are made from, read by the project's own reader.

import { readFileSync } from 'node:fs';
import type { HandoffInput } from '../../src/handoff/index.ts';
import { readTalk } from '../../src/record/talk/index.ts';
import { endOf, examine } from '../../src/replay/examine.ts';
import { handoffInput } from '../../src/replay/record-json.ts';
import { realReader } from '../talk-case.ts';

/** The demonstration of that name, made for the moment of its last words; throws where its talk has a fault. */
export function demoInput(name: string): HandoffInput {
  const text = readFileSync(new URL(`../../public/demo/${name}.talk`, import.meta.url), 'utf8');
  const talk = readTalk(text, { startedAt: 0, zone: 'UTC' });
  if (talk.kind === 'error') throw new Error(`line ${talk.line} of ${name} ${talk.why}`);
  const { state } = examine(realReader(), talk);
  return handoffInput(state, state.startedAt ?? '', endOf(talk));
}
