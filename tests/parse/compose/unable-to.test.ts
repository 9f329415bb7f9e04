// What somebody is unable to do is told of them, and told to nobody: it is kept. All talk is invented.

import { expect, it } from 'vitest';
import { standing } from '../standing.ts';

const notes = (talk: string) => standing(talk).flatMap((one) => (one.kind === 'note' ? [one.text] : []));

it.each([
  'unable to follow commands',
  'unable to follow my finger',
  'unable to follow what i say',
  'fails to squeeze my hand',
  'able to follow commands',
  'refuses to lift his leg',
])('is kept: %s', (talk) => expect(notes(talk)).toEqual([talk]));

it('is kept beside what is told with it', () =>
  expect(notes('unable to follow what i say, eyes open to voice')).toEqual(['unable to follow what i say']));

// Must not: it is told to the patient.
it.each(['now follow my finger', 'squeeze my hands', 'follow my finger with your eyes'])(
  'is no instruction’s: %s',
  (talk) => expect(notes(talk)).toEqual([]),
);
