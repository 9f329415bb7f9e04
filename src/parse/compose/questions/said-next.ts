// "No and the ankle is swollen", "headache?" "no, neck veins are flat": what is said behind an answer and says something whole is none
// of the answer.

import { isSite, isWithin, type Site } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Asked } from '../../context.ts';
import { marked, type Piece, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { isJoin, openingOf } from '../sayings/index.ts';
import type { Talk } from '../talk.ts';
import { answerWord } from './answer-word.ts';
import { isHurt } from './echo.ts';
import type { AskedFindings } from './settle.ts';

export interface Parted {
  readonly answer: readonly Piece[];
  readonly next: readonly Piece[];
}

/** The pieces of the answer and those that go on to something else; null where all of it answers. */
export function saidNext(talk: Talk, clause: Clause): Parted | null {
  const { asked } = talk.context;
  const said = answerWord(clause);
  if (asked === null || said === null) return null;
  const [first, ...others] = clause.pieces.slice(said.heads.length);
  const last = said.heads.at(-1);
  if (first === undefined || last === undefined) return null;
  const hurting = asked.about === 'topic' ? whatHurts(talk, clause.pieces, said.heads.length) : null;
  if (hurting !== null)
    return { answer: clause.pieces.slice(0, hurting), next: clause.pieces.slice(hurting) };
  if (isJoin(first))
    return openingOf(others, talk.tokens) === null ? null : { answer: said.heads, next: others };
  if (!isPaused(talk.tokens, last)) return null;
  const rest = [first, ...others];
  // To a question of history words of the patient's own may follow a "yes"; that it hurts may say again what was asked.
  const isTold =
    asked.about === 'topic' ? said.word === 'no' : asked.about !== 'findings' || !hurtsAgain(asked, rest);
  const opening = isTold ? openingOf(rest, talk.tokens) : null;
  return opening !== null && opening !== 'history' && opening !== 'score'
    ? { answer: said.heads, next: rest }
    : null;
}

/** Where "it's only my knee that hurts" begins behind an answer, or null. */
function whatHurts({ tokens }: Talk, pieces: readonly Piece[], from: number): number | null {
  const at = pieces.findIndex(
    (piece, k) => k >= from && /^(it|that) is$/.test(saidIn(tokens, piece.from, piece.from + 2)),
  );
  const rest = pieces.slice(Math.max(at, 0));
  const site = rest.findIndex(({ role }) => role === 'site');
  const end = rest.findIndex((piece, k) => k > site && piece.role === 'finding');
  const isMine = tokens.slice(rest[0]?.from, rest[site]?.to).some(({ word }) => word === 'my');
  const isTied = tokens.slice(rest[site]?.to, rest[end]?.from).some(({ word }) => word === 'that');
  return at >= from && site > 0 && end > site && isMine && isTied ? at : null;
}

// What was asked was whether it hurts, and nothing denies that it does.
const hurtsAgain = (asked: AskedFindings, rest: readonly Piece[]): boolean => {
  const at = rest.findIndex(({ role }) => role === 'finding');
  const found = rest[at];
  return (
    found !== undefined &&
    isHurt(tagIn(found, 'findings.finding', 'finding')) &&
    asked.findings.some(({ finding }) => isHurt(finding)) &&
    !isElsewhere(asked, rest) &&
    !rest.slice(0, at).some((piece) => marked(piece, 'negation', 'before'))
  );
};

// "Does your head hurt?" "Yes, ribs tender on the right."
const isElsewhere = (asked: AskedFindings, rest: readonly Piece[]): boolean => {
  const named = rest.flatMap((piece) => (tagIn(piece, 'sites', 'site') ?? '').split('+').filter(isSite));
  const outer = asked.sites.map(({ site }) => site);
  const isNear = (site: Site): boolean =>
    outer.some((one) => one === site || isWithin(site, one) || isWithin(one, site));
  return named.length > 0 && outer.length > 0 && !named.some(isNear);
};

/** "Any allergies?" "Penicillin, the left ankle is fine": the free answer, and what follows it; null where all of it may answer. */
export function toldNext({ tokens, context }: Talk, pieces: readonly Piece[]): Parted | null {
  for (let k = 1; k < pieces.length; k++) {
    const [before, piece] = [pieces[k - 1], pieces[k]];
    if (before === undefined || piece === undefined) continue;
    const begins = isJoin(piece) ? k + 1 : isPaused(tokens, before) ? k : null;
    if (begins === null || begins >= pieces.length) continue;
    const opening = openingOf(pieces, tokens, begins);
    // "When did it start?" "Around six, out of the blue": what is told of the same thing answers too.
    const isSame = opening === 'history' && TOLD_ON.has(topicOf(context.asked));
    if (opening !== null && opening !== 'score' && !isSame)
      return { answer: pieces.slice(0, k), next: pieces.slice(begins) };
  }
  return null;
}

const topicOf = (asked: Asked | null): string => (asked?.about === 'topic' ? asked.topic : '');

const TOLD_ON: ReadonlySet<string> = new Set([
  'events',
  'mechanism',
  'provocation',
  'quality',
  'radiation',
  'onset',
  'symptoms',
]);
