// A yes or a no to a question after findings, with what the answer adds: how bad, where, on which side.

import { isPaired, type SeverityWord } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';
import { type Attributes, attributesOf, joinAttributes } from '../findings/attributes.ts';
import { findingStatement } from '../findings/finding-statement.ts';
import { isChatter } from '../light.ts';
import { place, type Said, state, type Talk, textOf } from '../talk.ts';
import { answersElsewhere, isWhereAlone, sitesOfAnswer } from './answer-site.ts';
import type { AnswerWord } from './answer-word.ts';
import { echoedFindings, hasOwnFindings, saidOfAsked } from './echo.ts';
import { noteAnswer } from './note-answer.ts';
import { noteElsewhere } from './note-elsewhere.ts';
import { type AskedFindings, settle } from './settle.ts';
import { isOtherPress, isSaidAlready } from './standing.ts';

interface FindingsAnswer {
  readonly word: AnswerWord;
  readonly severity: SeverityWord | null;
  /** "I do": a whole sentence that cannot be taken the other way */
  readonly explicit: boolean;
  /** "yeah, no": both words are in it */
  readonly mixed: boolean;
  /** the words of the answer itself */
  readonly span: Span;
}

/** States what the answer settles of the findings asked after; returns the pieces after it that still have to be read. */
export function answerFindings(
  talk: Talk,
  asked: AskedFindings,
  { word, severity, explicit, mixed, span }: FindingsAnswer,
  said: readonly Piece[],
): readonly Piece[] {
  const rest = word === 'yes' && asked.sites.length === 0 ? [...said, ...placeNext(talk, said, span)] : said;
  // "Can you bend it?" "Yes", "a bit", "no, the other one": how far it goes, nobody said.
  const isElse = rest.some(({ role }) => role === 'site' || role === 'side');
  if (asked.done === true && (word !== 'no' || mixed || isElse)) {
    noteAnswer(talk, isElse ? { from: span.from, to: rest.at(-1)?.to ?? span.to } : span);
    if (isElse) place(talk, ...rest);
    return isElse ? [] : rest;
  }
  const says = hasOwnFindings(asked, rest);
  // "I do" and "yes, a little" settle a question put in the negative; a bare "yes" does not.
  const settled = explicit || severity !== null;
  const ambiguous = word === 'yes' && ((asked.negative && !settled) || asked.findings.length > 1);
  const isNowhere = asked.sites.length === 0;
  if (isNowhere && word === 'no' && asked.findings.every(({ present }) => present)) {
    // "Does this hurt?" asks of a spot that nobody named.
    if (POINTED.test(asked.text)) noteAnswer(talk, span);
    // "Pain anywhere?" "No, just the left foot" denies no pain.
    else if (!noteElsewhere(talk, asked, span, rest)) denyAll(talk, asked, span);
    return rest;
  }
  const own = saidOfAsked(asked, rest);
  // "Yeah, no pain now."
  if (word === 'yes' && own === 'denied') return rest;
  // "No, it hurts", and "is it okay?" "yeah, no": which is meant nobody can tell.
  const isTurned = asked.findings.some(({ present }) => !present);
  const opposes = word === 'no' && own === 'there' && !deniesOn(talk, span, rest);
  if (opposes || (mixed && isTurned)) {
    noteAnswer(talk, { from: span.from, to: rest.at(-1)?.to ?? span.to });
    place(talk, ...rest);
    return [];
  }
  const names = rest.some(({ role }) => role === 'site' || role === 'side');
  const which = word === 'yes' && asked.either && !names;
  // "Any pain?" "A little, in the left knee."
  const tellsWhere = word === 'yes' && isWhereAlone(talk, rest);
  if ((isNowhere && !tellsWhere) || (ambiguous && !says) || which) {
    noteAnswer(talk, { from: span.from, to: rest.at(-1)?.to ?? span.to });
    place(talk, ...rest);
    return [];
  }
  // "Yeah, tender right there": the answer's own words say more than the question did.
  if (ambiguous || (word === 'yes' && says)) return rest;
  const more = word === 'yes' ? moreOf(rest) : NOTHING_MORE;
  const sites = word === 'yes' ? sitesOfAnswer(talk, rest, asked.sites) : deniedSites(talk, asked, span);
  const { quality, ...others } = joinAttributes(severity === null ? {} : { severity }, more.attributes);
  const settles: readonly Said[] = sites.flatMap((ref) =>
    asked.findings.map((one) => ({
      statement: findingStatement(one.finding, ref, (word === 'yes') === one.present, {
        ...others,
        quality: word === 'yes' ? [...one.quality, ...(quality ?? [])] : [],
      }),
      known: {
        site: 'carried',
        finding: 'carried',
        ...(sites === asked.sites && ref.side !== null ? { side: 'carried' } : {}),
      } as const,
      from: span.from,
      to: Math.max(
        span.to,
        ...[...more.pieces, ...placesIn(rest, sites !== asked.sites)].map(({ to }) => to),
      ),
    })),
  );
  if (isSaidAlready(talk, asked, settles)) return rest;
  if (isOtherPress(talk, asked, settles)) {
    noteAnswer(talk, span);
    return rest;
  }
  settle(talk, settles);
  // "Is your hip sore?" "No, my thigh."
  if (word === 'no' && answersElsewhere(talk, rest, asked)) return [];
  if (word === 'no') noteElsewhere(talk, asked, span, rest);
  const taken = [...more.pieces, ...echoedFindings(asked, rest)];
  place(talk, ...taken);
  const isPlaceTaken = word === 'yes' || sites !== asked.sites;
  return rest.filter(
    (piece) => !taken.includes(piece) && !(isPlaceTaken && (piece.role === 'site' || piece.role === 'side')),
  );
}

// "Which elbow hurts?" "Neither of them."
function deniedSites(
  { tokens }: Talk,
  { sites, either }: AskedFindings,
  { from, to }: Span,
): readonly SiteRef[] {
  const isNeither = tokens.slice(from, to).some(({ word }) => word === 'neither');
  const [only, ...others] = sites;
  return either && isNeither && only?.side === null && others.length === 0 && isPaired(only.site)
    ? [{ ...only, side: 'both', sideKnown: 'spoken' }]
    : sites;
}

// "No, it does not hurt", "no no pain".
const deniesOn = ({ tokens }: Talk, { to }: Span, [first]: readonly Piece[]): boolean =>
  tokens[to - 1]?.word === 'not' || (first?.role === 'finding' && tokens[to - 1]?.pause === '');

// "Any pain?" "A bit. Left knee.": the place is all that the next clause says.
function placeNext(talk: Talk, said: readonly Piece[], { to }: Span): readonly Piece[] {
  const isLast = said.every((piece) => isChatter(piece));
  const next = talk.clauses.find(({ pieces }) => (pieces[0]?.from ?? 0) >= (said.at(-1)?.to ?? to));
  return isLast && next?.mood === 'statement' && isWhereAlone(talk, next.pieces) ? next.pieces : [];
}

const POINTED = /\b(this|that|here|there)\b/i;

/** The pieces of an answer that say where. */
const placesIn = (rest: readonly Piece[], taken: boolean): readonly Piece[] =>
  taken ? rest.filter(({ role }) => role === 'site' || role === 'side') : [];

interface More {
  readonly attributes: Attributes;
  readonly pieces: readonly Piece[];
}

const NOTHING_MORE: More = { attributes: {}, pieces: [] };

/** What the pieces after a yes say of the finding, up to the first that says something else. */
function moreOf(rest: readonly Piece[]): More {
  const end = rest.findIndex((piece) => attributesOf(piece) === null && !isChatter(piece));
  const pieces = (end < 0 ? rest : rest.slice(0, end)).filter((piece) => attributesOf(piece) !== null);
  return { pieces, attributes: pieces.map((piece) => attributesOf(piece) ?? {}).reduce(joinAttributes, {}) };
}

// "Any numbness anywhere?" "No": it has no one site, so it is a symptom denied in the words of the question.
function denyAll(talk: Talk, asked: AskedFindings, { from, to }: Span): void {
  const text = `${asked.text}: ${textOf(talk, from, to)}`;
  const statement = { kind: 'history', topic: 'symptoms', text, present: false } as const;
  state(talk, [{ statement, known: { topic: 'inferred' }, from, to }]);
}
