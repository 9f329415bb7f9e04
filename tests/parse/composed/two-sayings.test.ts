// What two sayings state in one breath is what each states alone, however they are joined. All of it is invented.

import { describe, expect, it } from 'vitest';
import { seeded } from '../../seeded.ts';
import { read } from '../read.ts';

// Each says its place and its side itself, so that it may borrow neither.
const SAYINGS = [
  'breastbone tender on the right',
  'the left elbow is bruised',
  'no swelling in the groin',
  "his ankles don't hurt",
  'hips fine',
  'scrape on the right shin',
  "right wrist isn't deformed",
  'burn on the chin about three centimetres',
  "belly's rigid",
  'no crepitus over the sternum',
  'left foot cold',
  "can't feel the fingers on the right",
  'moves both hands well',
  'eyes clear',
  'blood from the mouth',
  "the neck isn't sore",
  'laceration to the left knee',
  'both shins swollen',
  'respirations sixteen',
  'sats ninety six',
  'takes bisoprolol',
  'sling on the right arm',
  'tourniquet on the left thigh',
  'bandage on the chin',
  'pelvis free of any injury',
  'no discharge from the nose',
  'left hip is painful',
  'scalp not tender',
  'deformity of the right forearm',
  'no wounds on the left arm',
  'feeling is normal in both feet',
  "there's a graze on the left hand",
  'she has pain in the upper back',
  "trachea's central",
  "grip's weak on both sides",
  "collar's on",
  "he's got a gash over the right eyebrow",
  'neither elbow is swollen',
  'nothing wrong with the right shoulder',
  "left shin's splinted",
] as const;

const JOINS = [', ', ', and ', ', but ', ' and ', ' but ', '. '] as const;

const PAIRS = 900;

// A look adds nothing, and a note what was not understood.
const stated = (talk: string): readonly string[] =>
  read(talk)
    .filter((line) => !line.startsWith('visit ') && !line.startsWith('note: '))
    .toSorted();

describe('two sayings in one breath', () => {
  const chance = seeded(20261130);
  const alone = new Map<string, readonly string[]>(SAYINGS.map((one) => [one, stated(one)]));

  it.each(SAYINGS)('are understood one by one: %s', (one) => {
    expect(alone.get(one)).not.toEqual([]);
  });

  it('state together what each states alone', () => {
    const wrong: string[] = [];
    for (let k = 0; k < PAIRS; k++) {
      const [a, b] = [chance.pick(SAYINGS), chance.pick(SAYINGS)];
      if (a === b) continue;
      const talk = `${a}${chance.pick(JOINS)}${b}`;
      const [came, wanted] = [stated(talk), [...(alone.get(a) ?? []), ...(alone.get(b) ?? [])].toSorted()];
      if (came.join('; ') !== wanted.join('; ')) wrong.push(`${talk} → ${came.join('; ')}`);
    }
    expect(wrong).toEqual([]);
  });
});
