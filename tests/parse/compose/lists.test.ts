// Words to the problem list and words that turn to another patient; the same words in ordinary talk are neither.

import { describe, expect, it } from 'vitest';
import { framesOf, read } from '../read.ts';

const changes = (talk: string) =>
  framesOf(talk).flatMap((frame) => (frame.frame === 'problem' ? [frame.change] : []));

const turns = (talk: string) =>
  framesOf(talk).flatMap((frame) => (frame.frame === 'command' ? [frame.patient ?? frame.command] : []));

const at = (site: string, side: string | null = null) => ({ site, side });

const CHANGES: readonly (readonly [string, object])[] = [
  ['top problem is the left wrist', { change: 'first', problem: at('wrist', 'left') }],
  ['Left wrist is the top problem.', { change: 'first', problem: at('wrist', 'left') }],
  ['make the right femur the top problem', { change: 'first', problem: at('thigh', 'right') }],
  ['put the belly first on the problem list', { change: 'first', problem: at('abdomen') }],
  ['problem number one is his breathing', { change: 'first', problem: { words: 'breathing' } }],
  ['take the left knee off the problem list', { change: 'strike', problem: at('knee', 'left') }],
  ['strike the ankle from the problem list', { change: 'strike', problem: at('ankle') }],
  ['Problem list, strike the burn.', { change: 'strike', problem: { words: 'burn' } }],
  ['drop the problem left knee', { change: 'strike', problem: at('knee', 'left') }],
  ['add hypothermia to the problem list', { change: 'add', text: 'hypothermia' }],
  ['add problem suspected heat stroke', { change: 'add', text: 'suspected heat stroke' }],
  ['add to the problem list: cold and wet', { change: 'add', text: 'cold and wet' }],
];

describe('words to the problem list', () => {
  it.each(CHANGES)('%s', (talk, change) => {
    expect(changes(talk)).toEqual([change]);
    expect(read(talk)).toEqual([]);
  });

  it('end where their ending is said, or at the first pause after a name', () => {
    expect(read('take the knee off the problem list, pulse ninety')).toEqual(['pulse rate=90']);
    expect(read('top problem, left wrist, pulse ninety')).toEqual(['pulse rate=90']);
    expect(read('no swelling of the left ankle, put the belly first on the problem list')).toEqual([
      'no swelling left ankle',
    ]);
  });

  it.each([
    'the problem is his knee',
    'no problem',
    'the problem list is long',
    'do not add that to the problem list',
    'is the knee the top problem?',
    'if his knee swells put it on the problem list',
    'it is the top problem',
    'should we take the knee off the problem list',
    'add a splint to the left wrist',
    'take the boot off',
    'put the tourniquet on top',
  ])('are not heard in: %s', (talk) => expect(changes(talk)).toEqual([]));

  it.each(['it is the top problem', 'the problem list is long'])(
    'that name nothing to do are kept as a note: %s',
    (talk) => expect(read(talk)).toEqual([`note: ${talk}`]),
  );
});

const TURNS: readonly (readonly [string, number | string])[] = [
  ['patient two', 2],
  ['Okay, patient 2.', 2],
  ['and now casualty three', 3],
  ['patient number four', 4],
  ['next patient', 'next'],
  ['Next patient please.', 'next'],
  ['new patient', 'new'],
  ['start a new patient', 'new'],
  ['previous patient', 'previous'],
  ['back to patient one', 1],
  ['pulse ninety moving on to the next patient', 'next'],
  ['switching to casualty two', 2],
];

describe('words that turn to another patient', () => {
  it.each(TURNS)('%s', (talk, meant) => expect(turns(talk)).toEqual([meant]));

  it.each([
    'patient is two years old',
    'patient two days ago fell',
    'patient two has a broken ankle',
    'patient two is the other crew’s',
    'casualty two has a pulse of one twenty',
    'patient one twenty over eighty',
    'i told dispatch about patient two',
    'the next patient is worse',
    'tell the next patient to wait',
    'we should move on to the next patient',
    'should we switch to patient two',
    'do not switch to patient two',
    'if we go to patient two',
    'he was going back to patient two',
    'moving on to the left knee',
    'a new patient bag',
    'the patient before had a fever',
  ])('are not heard in: %s', (talk) => expect(turns(talk)).toEqual([]));

  it('leave the pressure of a patient whose figure begins with "one" as it is', () =>
    expect(read('patient one twenty over eighty')).toEqual(['blood-pressure systolic=120 diastolic=80']));

  it.each([
    'switching to patient two, pulse ninety',
    'patient two: pulse ninety',
    'Patient two. Pulse ninety.',
  ])('take what follows in the same breath out of this record: %s', (talk) => {
    const [turn, note, ...others] = framesOf(talk);
    expect(turn).toMatchObject({ frame: 'command', command: 'patient', patient: 2 });
    expect(turn).toHaveProperty('rest', expect.stringMatching(/^pulse ninety\.?$/i));
    expect(note).toMatchObject({ statement: { kind: 'note' }, doubt: [expect.stringContaining('another')] });
    expect(others).toEqual([]);
  });

  it('leave no site in mind for the next one', () =>
    expect(read('left knee swollen | patient two | deformity', 'finding')).toEqual(['swelling left knee']));
});
