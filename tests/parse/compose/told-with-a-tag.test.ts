// What an "isn't it" ends was told, and is asked about; and denials before words that deny by themselves. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { checkStatements } from '../rows.ts';
import { found, standing } from '../standing.ts';

describe('a finding with a question at its end', () => {
  it.each([
    "that left elbow is puffy, isn't it",
    'that left elbow is puffy isnt it my love',
    "your left elbow's puffy, isn't it? | yes",
  ])('is told: %s', (talk) => expect(found(talk)).toEqual([['elbow', 'left', 'swelling', true]]));

  it('is asked about', () => {
    const [one] = standing("that left elbow is puffy, isn't it");
    expect(one?.doubt).toHaveLength(1);
  });

  it('is turned by a no', () => {
    expect(found("the right heel's sore, isn't it? | no")).toEqual([['heel', 'right', 'pain', false]]);
  });

  it('goes on behind it', () => {
    expect(found('the nose is crooked isnt it and its bleeding')).toEqual([
      ['nose', null, 'deformity', true],
      ['nose', null, 'bleeding', true],
    ]);
  });

  it('tells the denials before it', () => {
    expect(found("right hip now no bruising no swelling but you're tender there aren't you")).toEqual([
      ['hip', 'right', 'contusion', false],
      ['hip', 'right', 'swelling', false],
      ['hip', 'right', 'tenderness', true],
    ]);
  });

  it.each(["is the left knee sore, isn't it", "there's no pain in the neck, is there"])(
    'is none where it asks: %s',
    (talk) => expect(found(talk).filter(([, , , present]) => present)).toEqual([]),
  );
});

describe('a "no" before what denies itself', () => {
  checkStatements([
    ['no she cannot feel the right foot', ['no sensation right foot']],
    ['left hand no he does not move it', ['no motion left hand']],
    [
      'can you feel me touching the left foot | yes | and the right | no i cant feel that',
      ['visit left foot', 'sensation left foot', 'visit right foot', 'no sensation right foot'],
    ],
    ['no loss of feeling in the right hand', ['sensation right hand']],
    ['does the left hip hurt no no hurt there', ['no pain left hip']],
  ]);
});

describe('a correction that names what it means', () => {
  it('turns that and leaves what was said since', () => {
    expect(
      found(
        'deep cut on the left calf | neck no pain | oh that cut I said was on the left calf correction it is the right calf',
      ),
    ).toEqual([
      ['neck', null, 'pain', false],
      ['lower-leg', 'right', 'laceration', true],
    ]);
  });

  it('names it otherwise at its own place', () => {
    expect(
      found(
        'left palm has a puncture | no deformity of the left wrist | that puncture on the palm, make that a laceration',
      ),
    ).toEqual([
      ['wrist', 'left', 'deformity', false],
      ['palm', 'left', 'laceration', true],
    ]);
  });

  it('ends where the speaker tells why', () => {
    expect(
      found("bruise on the left calf | correction, make that the right calf, I'm sat at your feet"),
    ).toEqual([['lower-leg', 'right', 'contusion', true]]);
  });
});

describe('what was, and whose it was', () => {
  checkStatements([
    [
      'was that elbow broken before? | yes, years ago',
      ['visit elbow', 'past-history: was that elbow broken before: yes, years ago'],
    ],
    [
      'your pressure is one ten over seventy which is better than mine',
      ['blood-pressure systolic=110 diastolic=70'],
    ],
    [
      'left knee swollen, and the right one is fine, no tenderness',
      ['swelling left knee', 'no abnormality right knee', 'no tenderness right knee'],
    ],
    ['csm left hand intact', ['circulation left hand', 'sensation left hand', 'motion left hand']],
    ['any allergies | no sir nothing', ['no allergies: no sir nothing']],
    ['what makes it worse | when I lift it', ['provocation: when I lift it']],
  ]);
});
