// A sign named anew, with a slip before its number, is a reading of now; one that is put right is the reading of then. Invented talk.

import { describe, expect, it } from 'vitest';
import { standing } from '../standing.ts';

const readings = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'vital' ? [JSON.stringify(one.value)] : [one.kind]));

describe('a sign named anew', () => {
  it.each([
    [
      'resps thirty | right knee is sore | resps, no wait, twenty six',
      ['{"rate":30}', 'finding', '{"rate":26}'],
    ],
    [
      'temperature thirty five | pulse sixty | temperature, sorry, thirty six two',
      ['{"celsius":35}', '{"rate":60}', '{"celsius":36.2}'],
    ],
  ])('is read anew behind a slip: %s', (talk, all) => expect(readings(talk)).toEqual(all));

  it.each([
    ['resps thirty | right knee is sore | resps, correction, twenty six', ['finding', '{"rate":26}']],
    [
      'pulse seventy | sats ninety three | the pulse should be seventy nine',
      ['{"percent":93}', '{"rate":79}'],
    ],
    ['pulse seventy | pulse, sorry, seventy nine', ['{"rate":79}']],
  ])('is put right: %s', (talk, all) => expect(readings(talk)).toEqual(all));
});

describe('a glucose without a unit that may be of either', () => {
  const asks = (talk: string) => standing(talk).flatMap((one) => one.doubt ?? []);
  it.each([
    ['blood sugar is twenty eight', ['Is it 28 mg/dL, or 28 mmol/L?']],
    ['glucose thirty one', ['Is it 31 mg/dL, or 31 mmol/L?']],
    // Must not: one unit alone shows it, or it was said.
    ['glucose nineteen', []],
    ['glucose forty one', []],
    ['glucose twenty eight milligrams per decilitre', []],
  ])('is asked about: %s', (talk, expected) => expect(asks(talk)).toEqual(expected));
});
