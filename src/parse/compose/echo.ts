// "L three is tender, L four is not", "C seven too": a place with a bare verb after it takes what was said of the place before.

import type { FindingStatement, Level } from '../../terms/index.ts';
import type { SiteRef } from '../context.ts';
import type { Piece } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import { csmStatement } from './csm/csm-statement.ts';
import { toEnd } from './csm/limb-ends.ts';
import { itemsOf } from './exam/items.ts';
import { phrasesAt, wordsOf } from './sites/item.ts';
import { sitesOf } from './sites/sides.ts';
import { groupUpTo } from './sites/site-group.ts';
import { wholeSite } from './sites/site-ref.ts';
import { bear, place, type Said, state, type Talk } from './talk.ts';

export interface Echo {
  /** indexes of the first piece of its places and past its verb */
  readonly from: number;
  readonly to: number;
  readonly refs: readonly SiteRef[];
  /** `too`: as it was said; `so` and `not`: there, or not there; `both`: each of two is there */
  readonly says: 'too' | 'so' | 'not' | 'both';
}

const VERBS: readonly (readonly [Echo['says'], RegExp])[] = [
  ['too', /^(is |are )?(too|as well|also)$/],
  ['not', /^(is|are|does|do) not( though)?$/],
  ['so', /^(is|are|does|do)( though)?$/],
  // "Left calf isn't tender or swollen, the right one is both."
  ['both', /^(is|are) both$/],
];

/** The first place of a clause that has nothing but such a verb after it, or null. */
export function echoIn(talk: Talk, pieces: readonly Piece[]): Echo | null {
  for (const [i, piece] of pieces.entries()) {
    if (piece.role !== 'site') continue;
    const verb = verbAfter(talk, pieces, i);
    const echo = verb === null ? null : echoAt(talk, pieces, i, verb);
    if (echo !== null) return echo;
  }
  return null;
}

interface Verb {
  readonly to: number;
  readonly says: Echo['says'];
}

function verbAfter({ tokens }: Talk, pieces: readonly Piece[], i: number): Verb | null {
  const site = pieces[i];
  if (site === undefined || isPaused(tokens, site)) return null;
  const end = pieces.findIndex((piece, k) => k > i && isPaused(tokens, piece));
  const to = end < 0 ? pieces.length : end + 1;
  const behind = tokens.slice(site.to, pieces[to - 1]?.to).map(({ word }) => word);
  const noun = tokens[site.to - 1];
  // "The right calf's both": the verb is in the word as it was written.
  const isJoined = noun !== undefined && noun.to - noun.from > noun.word.length;
  const words = isJoined && behind[0] === 'both' ? ['is', ...behind] : behind;
  // "Is it?" asks, and "how the knee is" was told by the words before it.
  if (tokens[(pieces[to - 1]?.to ?? 0) - 1]?.pause === 'ask') return null;
  const verb = VERBS.find(([, form]) => form.test(words.join(' ')));
  return verb === undefined ? null : { to, says: verb[0] };
}

const ASKS = /^(how|what|where|when|which|if|whether|is|are|does|do)$/;

function echoAt(talk: Talk, pieces: readonly Piece[], i: number, { to, says }: Verb): Echo | null {
  const items = itemsOf(talk, pieces.slice(0, i + 1));
  const last = items.findLastIndex((item) => item.type === 'site');
  if (last < 0) return null;
  const group = groupUpTo(items, talk.tokens, last);
  const first = items[group[0] ?? last];
  const start = first === undefined ? 0 : wordsOf(first).from;
  const from = pieces.findIndex((piece) => piece.to > start);
  const before = pieces.slice(0, from);
  const isSaid = before.some(({ role }) => role === 'finding');
  // "Tender at C four and C five too": these are the finding's own places.
  if (isSaid && !before.some(({ role }) => role === 'site')) return null;
  if (before.some(({ from: at }) => ASKS.test(talk.tokens[at]?.word ?? '')) && !isSaid) return null;
  const refs = sitesOf(phrasesAt(items, group), talk.context.sites);
  return { from, to, refs, says };
}

/** States of the echo's places what was last said; false, and nothing is stated, where that cannot be. */
export function sayAgain(talk: Talk, pieces: readonly Piece[], { from, to, refs, says }: Echo): boolean {
  const last = talk.context.last.filter((one) => one.kind === 'finding');
  if (last.length === 0 && talk.context.last.length > 0)
    return checkAgain(talk, pieces, { from, to, refs, says });
  if (last.length === 0 || last.length !== talk.context.last.length) return false;
  const isOfTwo = new Set(last.map(({ finding }) => finding)).size === 2;
  if (says === 'both' && !isOfTwo) return false;
  // What is not there is not there either: "the knee is not swollen, the hip isn't" says too little to turn it.
  if (says === 'not' && !last.every(({ present }) => present)) return false;
  const words = pieces.slice(from, to);
  const span = { from: words[0]?.from ?? 0, to: words.at(-1)?.to ?? 0 };
  const [model] = last;
  const said = refs.flatMap((ref) =>
    last
      .filter((one) => one.site === model?.site && one.side === model.side && one.level === model.level)
      .flatMap((one): readonly Said[] => {
        const statement = ofPlace(one, ref, says === 'too' ? one.present : says !== 'not');
        const known = {
          finding: 'carried' as const,
          ...(says === 'too' ? { present: 'carried' as const } : {}),
        };
        return isSamePlace(one, ref) ? [] : [{ statement, known, ...span }];
      }),
  );
  if (said.length === 0) return false;
  state(talk, said);
  place(talk, ...words);
  bear(talk, { sites: refs.map(wholeSite) });
  return true;
}

// "Arms move, legs don't": the same check of other limbs.
function checkAgain(talk: Talk, pieces: readonly Piece[], { from, to, refs, says }: Echo): boolean {
  const last = talk.context.last.filter((one) => one.kind === 'csm');
  const [model] = last;
  if (model === undefined || last.length !== talk.context.last.length || says === 'both') return false;
  if (says === 'not' && !last.every(({ present }) => present)) return false;
  const ends = refs.flatMap((ref) => toEnd(ref, null));
  const words = pieces.slice(from, to);
  const span = { from: words[0]?.from ?? 0, to: words.at(-1)?.to ?? 0 };
  const aspects = [...new Set(last.map(({ aspect }) => aspect))];
  const said = ends.flatMap((end) =>
    aspects.map(
      (aspect): Said => ({
        statement: csmStatement(end, aspect, says === 'too' ? model.present : says === 'so'),
        known: { aspect: 'carried', ...(says === 'too' ? { present: 'carried' as const } : {}) },
        ...span,
      }),
    ),
  );
  if (said.length === 0) return false;
  state(talk, said);
  place(talk, ...words);
  bear(talk, { sites: refs.map(wholeSite) });
  return true;
}

const isSamePlace = (one: FindingStatement, { site, side, level }: SiteRef): boolean =>
  one.site === site && one.side === side && (one.level ?? null) === level;

const ofPlace = (
  { kind, finding }: FindingStatement,
  { site, side, level }: SiteRef,
  present: boolean,
): FindingStatement => ({
  kind,
  site,
  side,
  finding,
  present,
  ...(level === null ? {} : { level: level as Level }),
});
