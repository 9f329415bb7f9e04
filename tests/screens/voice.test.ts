// Talking with the page: every word it offers is understood, and what it says back is what stands in the record.

import { describe, expect, it } from 'vitest';
import { COMMANDS } from '../../src/parse/frame.ts';
import type { Context } from '../../src/parse/index.ts';
import { beginExam, type Exam, hearUtterance } from '../../src/record/index.ts';
import { entriesOf, lastSaid } from '../../src/screens/talk/became.ts';
import { toldOfConfirm } from '../../src/screens/voice/confirmed.ts';
import { aloud, echoOf, entryAloud, soundOf } from '../../src/screens/voice/echo.ts';
import { SAYINGS } from '../../src/screens/voice/words.ts';
import { framesOf } from '../parse/read.ts';
import { realReader } from '../talk-case.ts';
import { entry, swelling } from './made-up.ts';

const START = Date.UTC(2031, 3, 5, 8);
const reader = realReader();

/** An invented exam in which these lines were said. */
function exam(...lines: readonly string[]): Exam<Context> {
  return lines.reduce(
    (before, text, index) =>
      hearUtterance(before, reader, { text, heardAt: START + index * 5000, zone: '+02:00' }),
    beginExam(reader, { device: 'test', startedAt: START, zone: '+02:00' }),
  );
}

const latest = (...lines: readonly string[]) => {
  const { events, state } = exam(...lines);
  const [last] = lastSaid(events, state, 1);
  if (last === undefined) throw new Error('nothing was said');
  return last;
};

describe('what can be said', () => {
  const sayings = SAYINGS.flatMap((group) => group.sayings);

  it.each(sayings.filter(({ command }) => command !== null))(
    '“$say” is that command and nothing else',
    ({ say, command }) => {
      expect(framesOf(say)).toMatchObject([{ frame: 'command', command }]);
    },
  );

  it.each(sayings.filter(({ command }) => command === null))(
    '“$say” is no command, and is understood',
    ({ say }) => {
      const frames = framesOf(`left forearm swelling | ${say}`).slice(1);
      expect(frames.length).toBeGreaterThan(0);
      expect(frames.some((one) => one.frame === 'statement' && one.statement.kind === 'note')).toBe(false);
    },
  );

  it.each([
    ['it holds', 'question-holds'],
    ['yes, both hold', 'question-holds'],
    ['okay, all of it holds, thanks', 'question-holds'],
    ['Leave it as it is.', 'question-holds'],
    ['misheard the second one', 'misheard-second'],
    ['first one is misheard', 'misheard-first'],
    ['read the question', 'question-next'],
    ['handover in SBAR order', 'order-sbar'],
    ['show me the report as soap', 'order-soap'],
    ['show the IMIST-AMBO', 'order-imist-ambo'],
    ['begin a new incident', 'new-incident'],
    ['put this list away', 'close-sheet'],
  ])('“%s” is “%s”', (said, command) => {
    expect(framesOf(said)).toMatchObject([{ frame: 'command', command }]);
  });

  it.each([
    ['reopen record 12', { place: 12 }],
    ['open record number twenty three', { place: 23 }],
    ['open the record for casualty four', { patient: 4 }],
    // Whatever the words are, they are the name's.
    ['open the record of Mark Ankle, left knee', { words: 'Mark Ankle, left knee' }],
  ])('“%s” means that record', (said, record) => {
    expect(framesOf(said)).toMatchObject([{ frame: 'command', command: 'open-record', record }]);
  });

  it('is offered for every command that the page knows', () => {
    const offered = new Set(sayings.map(({ command }) => command));
    // Turning to another patient has many forms, told with the records.
    expect(COMMANDS.filter((command) => command !== 'patient' && !offered.has(command))).toEqual([]);
  });

  // A look, an echo or a show that belongs to the patient's body is no command.
  it.each([
    'take a look at the night sky for me',
    'show me your hands',
    'put that back in place for me',
    'his body is cold',
    'I have some questions for you',
    'can you hear that sound again in your ear',
    'he was ready for the mountain hut and fell',
    'he makes gurgling sounds on breathing out',
    'stop, listen to his chest',
    'settle the question of the rope first',
    'that holds',
    'both hold still',
    'it holds well',
    'does it hold',
    'it holds?',
    'the splint, it holds',
    'leave it as it is and splint the left wrist',
    'left wrist, leave it as it is',
    'i misheard him',
    'the first thing he said was misheard',
    'can you ask that again',
    'next question is for the wife',
    'next question, does your neck hurt',
    'wash it with soap and water',
    'show me the soap dish',
    'the hospital wants a report in order',
    'we have an open record of that',
    'open record two is missing',
    'a new incident came in on the radio',
    'close the sheet over his legs',
    'show me the back of the hand',
  ])('“%s” asks nothing of the page', (said) => {
    expect(framesOf(said).filter(({ frame }) => frame === 'command')).toEqual([]);
  });
});

describe('the echo', () => {
  it('is silent where it is off', () => {
    expect(echoOf(latest('left forearm swelling'), 'off')).toBe('');
  });

  it('says side, place, finding and answer in short', () => {
    expect(echoOf(latest('no bleeding of the right forearm'), 'short')).toBe('right forearm, bleeding: no.');
  });

  it('says in full what was not spoken', () => {
    const said = latest('left forearm', 'swelling');
    expect(echoOf(said, 'short')).toBe('left forearm, swelling.');
    expect(echoOf(said, 'full')).toMatch(/^left forearm, swelling, .*carried over/);
  });

  it('says what a correction made of it', () => {
    expect(echoOf(latest('left forearm swelling', 'correction, right'), 'short')).toBe(
      'now right forearm, swelling.',
    );
  });

  it('counts what nobody keeps in the ear', () => {
    expect(echoOf(latest('C S M intact in all four'), 'short')).toMatch(/and 8 more\.$/);
  });

  it('reads units and pressures as words', () => {
    expect(aloud('LEFT laceration 3 cm, 120/80, 96%')).toBe(
      'left laceration 3 centimetres, 120 over 80, 96 percent',
    );
    expect(entryAloud(entry(swelling, { state: 'confirmed' }), 'full')).toBe(
      'left forearm, swelling, confirmed',
    );
  });
});

describe('a short sound', () => {
  it.each([
    ['left forearm swelling', 'heard'],
    ['the marmots were unimpressed', 'not-understood'],
    ['okay good', null],
    ['show the body', 'heard'],
    ['confirm', 'not-understood'],
    ['restore that', 'not-understood'],
    ['it holds', null],
    ['misheard the second', null],
    ['open record two', null],
  ])('for “%s” is %s', (line, sound) => {
    expect(soundOf(latest(line))).toBe(sound);
  });
});

describe('a “confirm”', () => {
  it.each([
    'do not confirm that',
    'not confirmed',
    'is that confirmed',
    'confirmed?',
    'can you confirm your name for me',
    'the winch is confirmed for fifteen hundred',
    'confirm right forearm swelling',
    'pulse ninety two, confirm',
  ])('confirms nothing in “%s”', (words) => {
    const { state, events } = exam('left forearm swelling', words);
    expect(state.entries.filter((one) => one.state === 'confirmed')).toEqual([]);
    expect(toldOfConfirm(events, state, 'off').spoken).toMatch(/^Nothing was confirmed: /);
  });

  it.each(['confirm', 'yes confirm', 'Confirmed, thank you.', 'confirm all of that'])(
    'confirms what was said last in “%s”',
    (words) => {
      expect(exam('left forearm swelling', words).state.entries[0]?.state).toBe('confirmed');
    },
  );

  it('names what the next one confirms, also where entries are not said back', () => {
    const told = (...lines: readonly string[]) => {
      const { state, events } = exam('left forearm swelling, no bleeding', ...lines);
      return toldOfConfirm(events, state, 'off');
    };
    expect(told('confirm')).toEqual({
      shown: 'Confirmed: left forearm, swelling. To confirm next: left forearm, bleeding: no.',
      spoken: 'To confirm next: left forearm, bleeding: no.',
    });
    expect(told('confirm', 'confirm')).toEqual({ shown: null, spoken: '' });
    expect(told('confirm', 'confirm', 'confirm').spoken).toBe(
      'Nothing was confirmed: nothing of the last words waits.',
    );
  });
});

describe('a strike', () => {
  it.each(["don't delete that", 'do not strike that', "don't forget that", 'did you scratch that'])(
    'is not meant by “%s”, which is kept and asked about',
    (words) => {
      const [swollen, kept] = exam('left forearm swelling', words).state.entries;
      expect(swollen?.state).toBe('heard');
      expect(kept).toMatchObject({ kind: 'note', text: words, doubt: ['was anything to be struck?'] });
    },
  );

  it('is taken back by word, and what stands again waits to be confirmed', () => {
    const { state, events } = exam('left forearm swelling', 'confirm', 'strike that', 'restore that');
    expect(state.entries.map((one) => one.state)).toEqual(['heard']);
    expect(events.map(({ kind }) => kind)).toContain('struck');
    expect(state.lastStruck).toEqual([]);
  });

  it('that never was leaves the word without effect', () => {
    expect(exam('left forearm swelling', 'restore that').state.entries.map((one) => one.state)).toEqual([
      'heard',
    ]);
  });

  it('is seen in the words that took it back', () => {
    const last = latest('left forearm swelling', 'strike that', 'restore that');
    expect(last.outcomes.map(({ kind }) => kind)).toEqual(['command', 'restored']);
    expect(entriesOf(last)).toEqual([]);
  });
});
