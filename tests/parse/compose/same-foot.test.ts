// "The same" of a limb's check means all that was checked there; "nothing" on the other side finds nothing there. Invented talk.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

const checked = (talk: string, side: string) =>
  standing(talk).flatMap((one) =>
    one.kind === 'csm' && one.side === side ? [`${one.site} ${one.aspect} ${one.present}`] : [],
  );

describe('the same of the other foot or hand', () => {
  it.each([
    [
      'pulse present in the left foot, feeling is there, wriggles his toes | right foot same',
      ['foot circulation true', 'foot sensation true', 'foot motion true'],
    ],
    [
      'left hand, good pulse | moves his fingers | right hand the same',
      ['hand circulation true', 'hand motion true'],
    ],
    ['left hand pulse good, feels it, same on the right', ['hand circulation true', 'hand sensation true']],
    [
      'left foot no pulse | left foot pulse is back | moves | right foot same',
      ['foot circulation true', 'foot motion true'],
    ],
  ])('has each check in %s', (talk, means) => expect(checked(talk, 'right')).toEqual(means));

  it.each([
    ['left foot pulse good | left hand grip strong | right the same', ['hand motion true']],
    ['left hand pulse good, feels it | grip strong | right grip the same', ['hand motion true']],
    ['left foot pulse good | forehead bruised | left foot moves | right foot same', ['foot motion true']],
  ])('has no other one in %s', (talk, means) => expect(checked(talk, 'right')).toEqual(means));
});

describe('nothing on the other side', () => {
  it.each([
    'left shoulder blade grazed | other side nothing',
    'left shoulder blade grazed and swollen | nothing on the right',
    'left shoulder blade grazed | the right nothing',
  ])('finds nothing there: %s', (talk) =>
    expect(found(talk).filter(([, side]) => side === 'right')).toEqual([
      ['scapula', 'right', 'abnormality', false],
    ]),
  );

  it.each([
    ['left knee swollen | none on the other side', [['knee', 'right', 'swelling', false]]],
    ['swelling of the left knee, nothing on the right', [['knee', 'right', 'swelling', false]]],
    ['pain in the left hip | nothing on the right', [['hip', 'right', 'pain', false]]],
  ] as const)('denies what was named in %s', (talk, means) =>
    expect(found(talk).filter(([, side]) => side === 'right')).toEqual(means),
  );
});

describe('a question with the other side alone', () => {
  it.each([
    ['left wrist swollen | other side? | nothing', [['wrist', 'right', 'abnormality', false]]],
    ['left wrist swollen | and the right? | nothing there', [['wrist', 'right', 'abnormality', false]]],
    ['is the left wrist sore | yes | the other one? | swollen', [['wrist', 'right', 'swelling', true]]],
  ] as const)('turns to it: %s', (talk, means) => expect(found(talk).slice(1)).toEqual(means));

  it.each([
    'left wrist swollen | right? | tender too',
    'left wrist swollen | is it the right? | tender too',
    'left wrist swollen | all right? | tender too',
  ])('does not in %s', (talk) => expect(found(talk).some(([, side]) => side === 'right')).toBe(false));
});
