// "Bleeding from the right shin has stopped", "the swelling of his eyelid has gone down": what is over at a named place. All invented.

import { describe, expect, it } from 'vitest';
import { standing } from '../standing.ts';

const findings = (talk: string) => standing(talk).filter(({ kind }) => kind === 'finding');

describe('bleeding that stopped is controlled, wherever its place is said', () => {
  it.each([
    'bleeding from the right shin has stopped',
    'right shin bleeding has stopped',
    'right shin | bleeding has stopped',
    'oozing on the right shin has now stopped',
  ])('%s', (said) => {
    expect(findings(said)).toEqual([
      expect.objectContaining({
        site: 'lower-leg',
        side: 'right',
        finding: 'bleeding',
        present: true,
        quality: expect.arrayContaining(['controlled']),
      }),
    ]);
  });

  it.each([
    'bleeding from the right shin has not stopped',
    'bleeding from the right shin',
    'bleeding from the right shin is heavy',
  ])('and no other is: %s', (said) => {
    expect(findings(said)).toHaveLength(1);
    expect(findings(said)[0]).not.toMatchObject({ quality: expect.arrayContaining(['controlled']) });
  });
});

it.each([
  'the swelling in his left cheek has gone down',
  'the rash on her back has faded',
  'bleeding from the left heel stopped with pressure',
])('what may be over is asked about: %s', (said) => {
  const [found] = findings(said);
  expect(found).toMatchObject({ present: true, doubt: ['Is it there now?'] });
});

it.each([
  'the rash on her back is spreading',
  'swelling of the left cheek',
  'pain in the left hip when he moves',
])('what goes on is not: %s', (said) => {
  expect(findings(said)[0]).not.toHaveProperty('doubt');
});

it('what has gone is not there', () => {
  expect(findings('tingling in the left foot has gone')).toEqual([
    expect.objectContaining({ present: false }),
  ]);
});
