// What the reports tell of a talk, by the whole way from its words; every talk is invented.

import { reckon } from '../../src/clinical/index.ts';
import { mist, radio, soap, textOf } from '../../src/handoff/index.ts';
import type { Reader } from '../../src/parse/index.ts';
import { formatIso } from '../../src/parse/times/index.ts';
import { readTalk } from '../../src/record/talk/index.ts';
import { examine } from '../../src/replay/examine.ts';
import { handoffInput } from '../../src/replay/record-json.ts';

/** The reports of a talk that began at ten past nine, made so many minutes later. */
export function toldOf(reader: Reader, lines: readonly string[], minutes = 30) {
  const talk = readTalk(lines.join('\n'), { startedAt: Date.UTC(2026, 4, 3, 15, 10, 0), zone: '-06:00' });
  if (talk.kind === 'error') throw new Error(`line ${talk.line} of the talk ${talk.why}`);
  const { state } = examine(reader, talk);
  const now = talk.startedAt + minutes * 60_000;
  const input = handoffInput(state, formatIso(talk.startedAt, talk.zone), now);
  return {
    input,
    soap: textOf(soap(input)),
    mist: textOf(mist(input)),
    radio: radio(input)
      .chunks.map(({ text }) => text)
      .join(' '),
    reckoning: reckon(state.entries, { now }),
  };
}
