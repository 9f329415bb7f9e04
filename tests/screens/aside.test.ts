// While the radio is in use nothing that is heard becomes an entry, and nothing that is heard is lost. Invented talk.

import { beforeEach, describe, expect, it } from 'vitest';
import { createDesk, type Desk, type DeskParts, say } from '../../src/screens/desk/index.ts';
import { takeAside } from '../../src/screens/reader/aside.ts';
import { realReader } from '../talk-case.ts';

const reader = realReader();
let desk: Desk;
let heard: string[];
let stop: () => void;

beforeEach(() => {
  const parts = {
    keeper: { keep: () => undefined },
    device: 'page-made-up',
    zone: () => 'UTC',
    clock: () => Date.parse('2026-05-03T14:02:00Z'),
    newId: () => 'made-up',
  };
  desk = createDesk(parts as unknown as DeskParts);
  desk.reader.value = reader;
  say(desk, ['pulse ninety two'], { engine: 'typed' });
  heard = [];
  stop = takeAside(desk, (text) => heard.push(text));
});

const entries = () => (desk.record.value?.exam.state.entries ?? []).map(({ heard: words }) => words);
const steps = () => desk.record.value?.exam.state.handover ?? [];
const commands = () =>
  (desk.record.value?.exam.events ?? []).flatMap((event) =>
    event.kind === 'command' ? [event.payload.command] : [],
  );

describe('what is heard while the radio is in use', () => {
  it('is kept as said and makes no entry, though it be the report itself', () => {
    say(desk, ['pulse one two four', 'left thigh bleeding'], { engine: 'browser' });
    expect(entries()).toEqual(['pulse ninety two']);
    expect(steps().map((step) => step.step === 'aside' && step.text)).toEqual([
      'pulse one two four',
      'left thigh bleeding',
    ]);
    expect(heard).toEqual(['pulse one two four', 'left thigh bleeding']);
  });

  it.each([
    ['next piece', 'next-piece'],
    ['go back one piece', 'last-piece'],
    ['say again', 'say-again'],
  ])('moves the reader where it is %j alone', (words, command) => {
    say(desk, [words], { engine: 'browser' });
    expect(commands()).toEqual([command]);
    expect(heard).toEqual([]);
  });

  it.each(['confirmed', 'strike that', 'make that the left', 'say again all after pulse ninety'])(
    'never confirms, strikes or changes an entry: %s',
    (words) => {
      const before = desk.record.value?.exam.state.entries;
      say(desk, [words], { engine: 'browser' });
      expect(desk.record.value?.exam.state.entries).toEqual(before);
      expect(commands()).toEqual([]);
      expect(heard).toEqual([words]);
    },
  );

  it('leaves what is typed alone: whoever types means it', () => {
    say(desk, ['left knee swelling'], { engine: 'typed' });
    expect(entries()).toEqual(['pulse ninety two', 'left knee swelling']);
  });

  it('goes its usual way again afterwards', () => {
    stop();
    say(desk, ['left knee swelling'], { engine: 'browser' });
    expect(entries()).toEqual(['pulse ninety two', 'left knee swelling']);
  });
});
