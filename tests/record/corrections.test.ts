// Corrections by voice: what they change, what they leave, and that nothing said is lost. All talk is invented.

import { describe, expect, it } from 'vitest';
import { type Entry, stands } from '../../src/record/index.ts';
import { finding, hearAll, note, pulse, type Script, START, visit } from './fake-reader.ts';

const entriesOf = (script: Script): readonly Entry[] => hearAll(script).state.entries;
const standingOf = (script: Script): readonly Entry[] => entriesOf(script).filter(stands);

describe('a statement of one vertebra said anew', () => {
  const level = (at: 'C4' | 'C5' | 'C6') =>
    finding({ site: 'cervical-spine', side: null, finding: 'tenderness', level: at });
  it('takes the place of the one that it was not, and leaves the other', () => {
    const standing = standingOf({
      first: [level('C4'), level('C5')],
      'five and six, not four': [
        {
          target: { kind: 'finding', level: 'C5' },
          change: { change: 'statement', statement: level('C5').statement },
        },
        {
          target: { kind: 'finding', level: 'C4' },
          change: { change: 'statement', statement: level('C6').statement },
        },
      ],
    });
    expect(standing.map((entry) => entry.kind === 'finding' && entry.level)).toEqual(['C5', 'C6']);
  });
});

describe('a sign said anew with a time', () => {
  const TEN_AGO = START - 10 * 60_000;
  const FIVE_AGO = START - 5 * 60_000;
  const rates = (at: number | undefined): readonly unknown[] =>
    standingOf({
      'two pulses': [
        { ...pulse(130), at: TEN_AGO },
        { ...pulse(115), at: FIVE_AGO },
      ],
      'the pulse was one oh five': [
        {
          target: { kind: 'vital', vital: 'pulse' },
          change: { change: 'statement', statement: pulse(105).statement },
          ...(at === undefined ? {} : { at }),
        },
      ],
    }).map((entry) => entry.kind === 'vital' && 'rate' in entry.value && entry.value.rate);

  it('takes the place of the one of that time', () => {
    expect(rates(TEN_AGO)).toEqual([115, 105]);
    expect(rates(FIVE_AGO)).toEqual([130, 105]);
  });

  it('takes the place of the latest one where no time was said', () => {
    expect(rates(undefined)).toEqual([130, 105]);
  });
});

describe('a strike', () => {
  it('takes back all that was said as one, and nothing said before it', () => {
    const entries = entriesOf({
      'left wrist swollen': [finding()],
      'no bruise no cut': [
        finding({ finding: 'contusion', present: false }),
        finding({ finding: 'laceration' }),
      ],
      'strike that': [{ change: { change: 'strike' } }],
    });
    expect(entries.map((entry) => entry.state)).toEqual(['heard', 'struck', 'struck']);
  });

  it('takes back the one before when it is said again', () => {
    const entries = entriesOf({
      first: [finding()],
      second: [pulse(92)],
      'strike that': [{ change: { change: 'strike' } }],
      'and strike that': [{ change: { change: 'strike' } }],
    });
    expect(entries.map((entry) => entry.state)).toEqual(['struck', 'struck']);
  });

  it('passes over visits and notes while anything of substance stands', () => {
    const entries = entriesOf({
      first: [finding()],
      'let me look': [visit()],
      mumble: [note('mumble')],
      'strike that': [{ change: { change: 'strike' } }],
    });
    expect(entries.map((entry) => entry.state)).toEqual(['struck', 'heard', 'heard']);
  });

  it('takes back a note where there is nothing else', () => {
    const entries = entriesOf({
      mumble: [note('mumble')],
      'strike that': [{ change: { change: 'strike' } }],
    });
    expect(entries.map((entry) => entry.state)).toEqual(['struck']);
  });

  it('that names something takes back the latest that fits, and only it', () => {
    const entries = entriesOf({
      list: [finding(), finding({ finding: 'pain' })],
      other: [pulse(92)],
      'scratch the pain': [{ target: { finding: 'pain' }, change: { change: 'strike' } }],
    });
    expect(entries.map((entry) => entry.state)).toEqual(['heard', 'struck', 'heard']);
  });

  it('of one side of what was said of both leaves the other side standing', () => {
    const standing = standingOf({
      both: [finding({ side: 'both' })],
      'scratch the left': [{ target: { site: 'wrist', side: 'left' }, change: { change: 'strike' } }],
    });
    expect(standing).toMatchObject([
      { kind: 'finding', side: 'right', heard: 'both', known: { side: 'inferred' } },
    ]);
  });

  it('that fits nothing is kept as a note with its reason', () => {
    const exam = hearAll({ 'strike that': [{ change: { change: 'strike' } }] });
    expect(exam.state.entries).toMatchObject([
      { kind: 'note', text: 'strike that', doubt: ['nothing earlier fits this correction'] },
    ]);
    expect(exam.state.unmatched).toHaveLength(1);
  });
});

describe('a corrected side', () => {
  it('replaces every entry of the group, keeps the other slots and the time, and has the new words', () => {
    const entries = entriesOf({
      'no swelling or pain, left wrist': [
        finding({ present: false }),
        finding({ finding: 'pain', present: false, part: ['distal'] }),
      ],
      'no, the right': [{ change: { change: 'side', side: 'right' } }],
    });
    expect(entries).toMatchObject([
      { state: 'replaced', side: 'left', replacedBy: entries[2]?.id },
      { state: 'replaced', side: 'left', replacedBy: entries[3]?.id },
      { state: 'heard', finding: 'swelling', side: 'right', present: false, heard: 'no, the right' },
      { state: 'heard', finding: 'pain', side: 'right', part: ['distal'], at: entries[1]?.at },
    ]);
  });

  it('settles a side that was carried, even where it is the same', () => {
    const [entry] = standingOf({
      'swelling there': [
        { ...finding(), known: { side: 'carried', site: 'carried' }, doubt: ['which side?'] },
      ],
      'the left': [{ change: { change: 'side', side: 'left' } }],
    });
    expect(entry?.known).toEqual({ site: 'carried' });
    expect(entry?.doubt).toBeUndefined();
  });

  it('reaches past a pulse to the last thing with a side, and says that it did', () => {
    const entries = entriesOf({
      'left wrist swollen': [finding()],
      'pulse 92': [pulse(92)],
      'no, the right': [{ change: { change: 'side', side: 'right' } }],
    });
    expect(entries.map((entry) => entry.state)).toEqual(['replaced', 'heard', 'heard']);
    expect(entries[2]).toMatchObject({ side: 'right', doubt: ['taken to correct “left wrist swollen”'] });
  });

  it('changes only the last of a group that spoke of both sides apart', () => {
    const standing = standingOf({
      'graze on the left knee, cut on the right elbow': [
        finding({ site: 'knee', finding: 'abrasion' }),
        finding({ site: 'elbow', side: 'right', finding: 'laceration' }),
      ],
      'sorry, left': [{ change: { change: 'side', side: 'left' } }],
    });
    expect(standing).toMatchObject([
      { site: 'knee', side: 'left', heard: 'graze on the left knee, cut on the right elbow' },
      { site: 'elbow', side: 'left', heard: 'sorry, left' },
    ]);
  });

  it('that is already so is kept as a note and changes nothing', () => {
    const entries = entriesOf({
      first: [finding()],
      'the left': [{ change: { change: 'side', side: 'left' } }],
    });
    expect(entries).toMatchObject([
      { state: 'heard' },
      { kind: 'note', doubt: ['the record says so already'] },
    ]);
  });
});

describe('a corrected site', () => {
  it('keeps the side as carried where the new site has two', () => {
    const [entry] = standingOf({
      first: [finding({ part: ['distal'] })],
      'sorry, forearm': [{ change: { change: 'site', site: 'forearm' } }],
    });
    expect(entry).toMatchObject({
      site: 'forearm',
      side: 'left',
      known: { side: 'carried', part: 'carried' },
    });
  });

  it('drops the side where the new site has one, and a level with the old site', () => {
    const [entry] = standingOf({
      first: [finding({ site: 'ribs', level: 'rib-7' })],
      'sorry, sternum': [{ change: { change: 'site', site: 'sternum' } }],
    });
    expect(entry).toMatchObject({ site: 'sternum', side: null });
    expect(entry).not.toHaveProperty('level');
  });

  it('may be a level alone', () => {
    const standing = standingOf({
      'tender at T four': [
        finding({ site: 'thoracic-spine', side: null, finding: 'tenderness', level: 'T4' }),
      ],
      'make that T five': [{ change: { change: 'site', site: 'thoracic-spine', level: 'T5' } }],
    });
    expect(standing).toMatchObject([
      { site: 'thoracic-spine', side: null, level: 'T5', finding: 'tenderness' },
    ]);
  });

  it.each([
    ['forearm', undefined],
    ['thigh', 1],
  ] as const)(
    'leaves a doubt where it changes the region, and none within it: wrist to %s',
    (site, doubts) => {
      const [entry] = standingOf({ first: [finding()], sorry: [{ change: { change: 'site', site } }] });
      expect(entry).toMatchObject({ site });
      expect(entry?.doubt?.length).toBe(doubts);
    },
  );

  it('makes no sense of a pulse', () => {
    const entries = entriesOf({
      'pulse 92': [pulse(92)],
      wrist: [{ change: { change: 'site', site: 'wrist' } }],
    });
    expect(entries).toMatchObject([{ state: 'heard' }, { kind: 'note' }]);
  });
});

describe('a corrected finding or answer', () => {
  it('replaces the last of a list alone', () => {
    const standing = standingOf({
      list: [finding(), finding({ finding: 'contusion' })],
      'make that a cut': [{ change: { change: 'finding', finding: 'laceration' } }],
    });
    expect(standing).toMatchObject([
      { finding: 'swelling' },
      { finding: 'laceration', site: 'wrist', side: 'left' },
    ]);
  });

  it('turns every answer of the group', () => {
    const standing = standingOf({
      list: [finding({ present: false }), finding({ finding: 'pain', present: false })],
      'correction, there is': [{ change: { change: 'present', present: true } }],
    });
    expect(standing).toMatchObject([{ present: true }, { finding: 'pain', present: true }]);
  });
});

describe('a whole statement anew', () => {
  const correction = (statement: Extract<Script[string][number], { statement: unknown }>['statement']) => [
    { change: { change: 'statement', statement } } as const,
  ];

  it('replaces the latest vital of that name and keeps its time', () => {
    const entries = entriesOf({
      a: [pulse(88)],
      b: [pulse(92)],
      c: [finding()],
      'correction, pulse 94': correction(pulse(94).statement),
    });
    expect(entries.map((entry) => entry.state)).toEqual(['heard', 'replaced', 'heard', 'heard']);
    expect(entries[3]).toMatchObject({ value: { rate: 94 }, at: entries[1]?.at });
  });

  it('replaces the same finding of the same side before that of the other', () => {
    const entries = entriesOf({
      a: [finding({ side: 'left' })],
      b: [finding({ side: 'right' })],
      c: correction(finding({ side: 'left', present: false }).statement),
    });
    expect(entries.map((entry) => entry.state)).toEqual(['replaced', 'heard', 'heard']);
  });

  it('replaces the same finding of the other side where that is all there is', () => {
    const entries = entriesOf({ a: [finding()], b: correction(finding({ side: 'right' }).statement) });
    expect(entries.map((entry) => entry.state)).toEqual(['replaced', 'heard']);
  });

  it('of both sides replaces the left and the right', () => {
    const entries = entriesOf({
      a: [finding({ side: 'left' })],
      b: [finding({ side: 'right' })],
      c: correction(finding({ side: 'both', present: false }).statement),
    });
    expect(entries.map((entry) => entry.state)).toEqual(['replaced', 'replaced', 'heard']);
  });

  it('of one side leaves what was said of the other', () => {
    const standing = standingOf({
      a: [finding({ side: 'both', present: false })],
      b: correction(finding({ side: 'left' }).statement),
    });
    expect(standing).toMatchObject([
      { side: 'left', present: true },
      { side: 'right', present: false, known: { side: 'inferred' } },
    ]);
  });

  it('replaces another finding at the same place just said, and says what it took it for', () => {
    const standing = standingOf({
      'a graze': [finding({ finding: 'abrasion' })],
      b: correction(finding({ finding: 'laceration' }).statement),
    });
    expect(standing).toMatchObject([{ finding: 'laceration', doubt: ['taken to replace “a graze”'] }]);
  });

  it('in two parts does not let the second replace the first', () => {
    const standing = standingOf({
      a: [finding({ finding: 'abrasion' })],
      b: [
        ...correction(finding({ finding: 'laceration' }).statement),
        ...correction(finding({ finding: 'burn' }).statement),
      ],
    });
    expect(standing).toMatchObject([{ finding: 'laceration' }, { finding: 'burn' }]);
  });

  it('that fits nothing enters with a doubt', () => {
    const entries = entriesOf({ a: [finding()], b: correction(pulse(94).statement) });
    expect(entries).toMatchObject([
      { state: 'heard' },
      { state: 'heard', value: { rate: 94 }, doubt: ['nothing earlier fits this correction'] },
    ]);
  });
});
