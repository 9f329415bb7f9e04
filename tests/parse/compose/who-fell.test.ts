// Who is told from others by what happened to him may be the patient; then it is asked. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { checkStatements } from '../rows.ts';
import { found, standing } from '../standing.ts';

describe('the one who fell', () => {
  it.each([
    ['the chap who slipped has a graze on his right palm', [['palm', 'right', 'abrasion', true]]],
    ["the girl that came off her sledge, right ankle's swollen", [['ankle', 'right', 'swelling', true]]],
  ] as const)('is taken for the patient, and asked about: %s', (talk, entries) => {
    expect(found(talk)).toEqual(entries);
    expect(standing(talk).map((one) => one.doubt?.join())).toEqual([
      'Was this said of the patient?',
      'Was this said of the patient?',
    ]);
  });

  checkStatements([
    // Nobody has to ask after these.
    ['the chap has a graze on his right palm', ['abrasion right palm']],
    ['the patient who fell has a sore right hip', ['mechanism: who fell', 'pain right hip']],
    // Somebody else.
    ['the chap who ran into you has a split lip', ['note: the chap who ran into you has a split lip']],
    ['the girl who found her grazed her palm', ['note: the girl who found her grazed her palm']],
    ['the lady who fell yesterday has a sore hip', ['note: the lady who fell yesterday has a sore hip']],
    [
      'her friend has a split lip | the girl who fell has a sore hip',
      ['note: her friend has a split lip', 'note: the girl who fell has a sore hip'],
    ],
  ]);
});
