// Care that was offered and refused, held back, spat out or taken back afterwards. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { statementsOf } from '../read.ts';
import { checkCorrections, checkStatements } from '../rows.ts';

describe('care that the words behind it say was not given is kept in words', () => {
  checkStatements([
    ['codeine sixty milligrams, he refused', ['note: codeine sixty milligrams, he refused']],
    ['ibuprofen four hundred milligrams, declined', ['note: ibuprofen four hundred milligrams, declined']],
    ['paracetamol one gram he spat it out', ['note: paracetamol one gram he spat it out']],
    [
      'ondansetron eight milligrams, she cannot lie back, not given',
      ['note: ondansetron eight milligrams, she cannot lie back, not given'],
    ],
    ['ketamine twenty milligrams withheld', ['note: ketamine twenty milligrams withheld']],
    ['oxygen four litres, would not have it', ['note: oxygen four litres, would not have it']],
    [
      'aspirin three hundred milligrams, refused, pulse eighty',
      ['pulse rate=80', 'note: aspirin three hundred milligrams, refused'],
    ],
    ['refused tramadol fifty milligrams', ['note: refused tramadol fifty milligrams']],
    ['almost gave ketamine fifty milligrams', ['note: almost gave ketamine fifty milligrams']],
  ]);
});

describe('care stands where something else was refused', () => {
  checkStatements([
    [
      'fentanyl fifty micrograms i v, refused a splint',
      ['medication text=fentanyl fifty micrograms i v', 'note: refused a splint'],
    ],
    [
      'paracetamol one gram, codeine not given',
      ['medication text=paracetamol one gram', 'note: codeine not given'],
    ],
    [
      'aspirin three hundred milligrams, refused at first, then took it',
      ['medication text=aspirin three hundred milligrams', 'note: refused at first, then took it'],
    ],
    ['splint on the left wrist, he refused morphine', ['splint left wrist', 'note: he refused morphine']],
    [
      'salbutamol five milligrams neb, did not take long to help',
      ['medication text=salbutamol five milligrams neb', 'note: did not take long to help'],
    ],
  ]);
});

describe('what was given and may not have stayed is asked about', () => {
  it.each([
    ['codeine thirty milligrams, he threw it up', 'Was it kept down?'],
    ['paracetamol one gram and codeine thirty milligrams, refused', 'Was it given, or refused too?'],
  ])('%s', (talk, question) => {
    const care = statementsOf(talk).filter(({ statement }) => statement.kind === 'care');
    expect(care.map(({ doubt }) => doubt)).toEqual([[question]]);
  });
});

describe('care that a later breath says was not given is struck', () => {
  checkCorrections([
    [
      'codeine sixty milligrams given | no, codeine was not given',
      ['strike ← kind=care care=medication text=codeine sixty milligrams given'],
    ],
    [
      'ketamine twenty milligrams. she refused it',
      ['strike ← kind=care care=medication text=ketamine twenty milligrams'],
    ],
    [
      'tramadol fifty milligrams | sorry, he never took it',
      ['strike ← kind=care care=medication text=tramadol fifty milligrams'],
    ],
    [
      'second dose of codeine, correction, no second dose',
      ['strike ← kind=care care=medication text=second dose of codeine'],
    ],
    [
      'right ankle splinted | no, the splint was not put on',
      ['strike ← kind=care care=splint site=ankle side=right'],
    ],
    [
      'ketamine ten milligrams at two | ketamine ten milligrams at ten past two | the second ketamine was not given',
      ['strike ← kind=care care=medication text=ketamine ten milligrams'],
    ],
  ]);
});

describe('care that others were given or that was told for sure stands', () => {
  checkCorrections([
    ['codeine sixty milligrams | aspirin was not given', []],
    ['codeine sixty milligrams at two | second codeine not given', []],
    ['codeine sixty milligrams | she refused the stretcher', []],
    ['codeine sixty milligrams | he has never taken codeine', []],
    ['codeine sixty milligrams | was the codeine not given?', []],
    ['codeine sixty milligrams | he did not pass out', []],
    [
      'codeine sixty milligrams given | he refused',
      [
        'statement medication text=codeine sixty milligrams given ← kind=care care=medication text=codeine sixty milligrams given',
      ],
    ],
  ]);

  it('keeps the words and asks which dose is meant where two were told', () => {
    const last = statementsOf(
      'ketamine ten milligrams at two | ketamine ten milligrams at ten past two | the ketamine was not given',
    ).at(-1);
    expect(last?.statement).toEqual({ kind: 'note', text: 'the ketamine was not given' });
    expect(last?.doubt).toEqual(['Which of those that were told was not given?']);
  });
});
