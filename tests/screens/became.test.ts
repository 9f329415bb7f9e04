// The last utterances stand with what each became, and what a hand did is not laid at the door of words.

import { describe, expect, it } from 'vitest';
import { createReader } from '../../src/parse/index.ts';
import { beginExam, confirmEntries, editEntry, hearUtterance } from '../../src/record/index.ts';
import { grammarFiles } from '../../src/replay/grammar-files.ts';
import { lastSaid } from '../../src/screens/talk/became.ts';

const made = createReader(grammarFiles());
if (made.kind !== 'reader') throw new Error('the grammar has faults');
const { reader } = made;

const START = Date.parse('2031-04-05T10:00:00+02:00');
const begin = () => beginExam(reader, { device: 'test', startedAt: START, zone: '+02:00' });
const hear = (exam: ReturnType<typeof begin>, text: string) =>
  hearUtterance(exam, reader, { text, heardAt: START, zone: '+02:00' });
const said = (lines: readonly string[]) => lines.reduce(hear, begin());

const kinds = (exam: ReturnType<typeof begin>, count = 10) =>
  lastSaid(exam.events, exam.state, count).map(({ text, outcomes }) => [
    text,
    outcomes.map(({ kind }) => kind),
  ]);

describe('the last utterances', () => {
  it('come latest first, each with its outcomes', () => {
    expect(
      kinds(said(['left forearm swelling', 'make that the right', 'strike that', "what's left"])),
    ).toEqual([
      ["what's left", ['command']],
      ['strike that', ['struck']],
      ['make that the right', ['corrected']],
      ['left forearm swelling', ['entered']],
    ]);
  });

  it('are as many as asked for', () => {
    expect(kinds(said(['left knee swelling', 'right knee swelling', 'no bleeding']), 2)).toHaveLength(2);
  });

  it('with nothing to record stand with no outcome', () => {
    expect(kinds(said(['okay']))).toEqual([['okay', []]]);
  });

  it('do not take on what a hand did afterwards, but show the entry as it stands now', () => {
    const heard = said(['left forearm swelling']);
    const [entry] = heard.state.entries;
    const confirmed = confirmEntries(heard, [entry?.id ?? ''], START);
    expect(kinds(confirmed)).toEqual([['left forearm swelling', ['entered']]]);
    const [outcome] = lastSaid(confirmed.events, confirmed.state, 1)[0]?.outcomes ?? [];
    expect(outcome?.kind === 'entered' && outcome.entry.state).toBe('confirmed');
    const edited = editEntry(heard, entry?.id ?? '', { change: 'side', side: 'right' }, START);
    expect(edited.kind === 'edited' && kinds(edited.exam)).toEqual([['left forearm swelling', ['entered']]]);
  });
});
