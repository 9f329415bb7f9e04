// "Correction, verbal three", "make that motor five": one part of a coma scale is another, and the others stand. "Sorry, V".

import type { GcsPart, VitalStatement } from '../../../terms/index.ts';
import { figureIn, marked, type Piece } from '../../pieces/piece.ts';
import { isChatter } from '../light.ts';
import type { Talk } from '../talk.ts';
import { totalOf } from '../vitals/gcs.ts';
import type { Changed } from './changes.ts';
import { type StateAll, wouldSay } from './dry-run.ts';

const PARTS = ['eye', 'verbal', 'motor'] as const;
type Part = (typeof PARTS)[number];
const MOST = { eye: 4, verbal: 5, motor: 6 } as const;
const LETTER: Readonly<Record<string, Part>> = { e: 'eye', v: 'verbal', m: 'motor' };

/** The change of one part of the coma scale said last, or of the letter of the AVPU scale; null for any other words. */
export function scaleAnew(
  talk: Talk,
  pieces: readonly Piece[],
  stateAll: StateAll,
): readonly Changed[] | null {
  const last = talk.context.said.at(-1);
  if (last?.kind !== 'vital') return null;
  const withSum = last.vital === 'gcs' ? partAndSum(talk, pieces, last, stateAll) : null;
  if (withSum !== null) return withSum;
  // "Correction, M seven" is no part, and no sum either.
  if (last.vital === 'gcs' && isImpossible(talk, pieces)) return [];
  const statement =
    last.vital === 'gcs'
      ? withPart(last, partIn(talk, pieces, last, stateAll))
      : last.vital === 'responsiveness'
        ? withLetter(last, wordsOf(talk, pieces))
        : null;
  return statement === null
    ? null
    : [{ change: { change: 'statement', statement }, target: { kind: 'vital', vital: last.vital } }];
}

/** "Make the eyes four, so that's fourteen": the part stands with the sum behind it, and a sum that does not fit is asked about. */
function partAndSum(
  talk: Talk,
  pieces: readonly Piece[],
  last: Scale,
  stateAll: StateAll,
): readonly Changed[] | null {
  const at = pieces.findLastIndex(({ role }) => role === 'figure');
  const [sum, part] = [pieces[at], pieces.slice(0, at).findLastIndex(({ role }) => role === 'vital')];
  const between = pieces.slice(part + 1, at);
  if (sum === undefined || part < 0 || !pieces.slice(at + 1).every(isChatter)) return null;
  if (!between.every((piece) => isChatter(piece) || marked(piece, 'negation', 'stop'))) return null;
  const statement = withPart(last, partIn(talk, pieces.slice(0, part + 1), last, stateAll));
  if (statement === null) return null;
  const { total } = statement.value;
  const said = figureIn(sum);
  const doubt =
    said === total ? [] : [`The parts make ${total ?? 'no sum'}, and ${said} was said: which is it?`];
  return [
    {
      change: { change: 'statement', statement },
      target: { kind: 'vital', vital: 'gcs' },
      basis: { statement, known: {}, doubt },
    },
  ];
}

type Scale = Extract<VitalStatement, { readonly vital: 'gcs' }>;
type Awake = Extract<VitalStatement, { readonly vital: 'responsiveness' }>;
type Scored = readonly [part: Part, score: GcsPart];

const wordsOf = ({ tokens }: Talk, pieces: readonly Piece[]): readonly string[] =>
  pieces.flatMap(({ from, to }) => tokens.slice(from, to).map(({ word }) => word));

function isImpossible(talk: Talk, pieces: readonly Piece[]): boolean {
  const [letter = '', ...others] = wordsOf(talk, pieces);
  const part = LETTER[letter];
  const figure = pieces.at(-1);
  const score = figure === undefined ? null : figureIn(figure);
  return part !== undefined && others.length > 0 && score !== null && score > MOST[part];
}

function partIn(talk: Talk, pieces: readonly Piece[], last: Scale, stateAll: StateAll): Scored | null {
  const figures = pieces.flatMap((piece) => (piece.role === 'figure' ? (figureIn(piece) ?? []) : []));
  const [score, ...more] = figures;
  if (score !== undefined && more.length === 0) {
    const words = wordsOf(talk, pieces);
    const letter = words.length === 2 ? LETTER[words[0] ?? ''] : undefined;
    const said = PARTS.filter((part) => last.value[part] !== undefined);
    const only =
      words.length === 1 && said.length === 1 && last.value.total === undefined ? said[0] : undefined;
    const part = letter ?? only;
    return part === undefined ? null : [part, score];
  }
  const [one, ...others] = wouldSay(talk, pieces, stateAll).map(({ statement }) => statement);
  if (others.length > 0 || one?.kind !== 'vital' || one.vital !== 'gcs') return null;
  const [named, ...rest] = PARTS.flatMap((part): Scored[] => {
    const value = one.value[part];
    return value === undefined ? [] : [[part, value]];
  });
  return rest.length > 0 || one.value.total !== undefined ? null : (named ?? null);
}

function withPart(last: Scale, scored: Scored | null): Scale | null {
  if (scored === null || PARTS.every((part) => last.value[part] === undefined)) return null;
  const [part, score] = scored;
  if (score !== 'NT' && !(Number.isInteger(score) && score >= 1 && score <= MOST[part])) return null;
  const { total: _, ...parts } = { ...last.value, [part]: score };
  const total = totalOf(parts);
  return { ...last, value: total === null || total === 'misfit' ? parts : { ...parts, total } };
}

function withLetter(last: Awake, words: readonly string[]): Awake | null {
  const [letter = '', ...others] = words;
  const avpu = { a: 'A', v: 'V', p: 'P', u: 'U' } as const;
  if (others.length > 0 || !Object.hasOwn(avpu, letter)) return null;
  return { ...last, value: { avpu: avpu[letter as keyof typeof avpu] } };
}
