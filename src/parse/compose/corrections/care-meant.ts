// Which care that was told words mean that name it again: "the second dose", "the morphine", "it".

import type { CareStatement } from '../../../terms/index.ts';
import type { Cared } from '../../context.ts';
import type { CorrectionTarget } from '../../frame.ts';
import { readNumbers } from '../../numbers/index.ts';
import type { Talk } from '../talk.ts';

const NTH: readonly string[] = ['first', 'second', 'third', 'fourth'];

/**
 * The care that all of these words name; the one said last where there are none, and none where nobody can tell that one apart from
 * another that was told in the same words.
 */
export function careMeant(
  { context: { cared, said, isSaidLast } }: Talk,
  named: readonly string[],
): readonly Cared[] {
  const isOne = said.filter(({ kind }) => kind === 'care').length === 1;
  if (named.length === 0) return isSaidLast && isOne ? cared.slice(-1) : [];
  const own = cared.filter((one) => isNamed(one, named));
  if (own.length > 0) return own;
  const [nth, ...more] = named.filter((word) => NTH.includes(word));
  const rest = named.filter((word) => word !== nth);
  if (nth === undefined || more.length > 0) return [];
  const all = rest.length > 0 ? cared.filter((one) => isNamed(one, rest)) : dosesOfOne(cared);
  const at = NTH.indexOf(nth);
  return all.slice(at, at + 1);
}

function isNamed({ text, care }: Cared, named: readonly string[]): boolean {
  const told = `${text ?? ''} ${care.replaceAll('-', ' ')}`.toLowerCase().split(/[^a-z0-9]+/);
  return named.every((word) => told.includes(word));
}

/** The doses where only one drug was given; none where there are several drugs. */
function dosesOfOne(cared: readonly Cared[]): readonly Cared[] {
  const doses = cared.filter(({ care }) => care === 'medication');
  return new Set(doses.map(drugOf)).size === 1 ? doses : [];
}

const BEFORE_NAME = new Set('first second third fourth another repeat dose of a an the him her'.split(' '));

const drugOf = ({ text }: Cared): string => {
  const words = (text ?? '').toLowerCase().split(/\s+/);
  const at = words.findIndex((word, k) => !BEFORE_NAME.has(word) && readNumbers(words, k).length === 0);
  return words[at] ?? '';
};

/** True where what is told later of the same words would be taken for it. */
export const isLastSo = ({ context: { cared } }: Talk, one: Cared): boolean =>
  cared.findLast(
    ({ care, text, site, side }) =>
      care === one.care && text === one.text && site === one.site && side === one.side,
  ) === one;

/** What a correction of it means. */
export const targetOfCare = ({ care, text, site, side }: Cared): CorrectionTarget => ({
  kind: 'care',
  care,
  ...(text === null ? {} : { text }),
  ...(site === null ? {} : { site }),
  ...(side === null ? {} : { side }),
});

/** It as it was told. */
export const statementOfCare = ({ care, site, side, text }: Cared): CareStatement => ({
  kind: 'care',
  care,
  ...(site === null ? {} : { site, side }),
  ...(text === null ? {} : { text }),
});
