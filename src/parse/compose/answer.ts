// Composes an answer: what was asked, said to be so or not; what cannot be settled by it is kept as a note.

import type { CsmStatement, FindingStatement, SeverityWord, Side } from '../../terms/index.ts';
import type { Clause } from '../clause.ts';
import type { Asked, SiteRef } from '../context.ts';
import { tagOf } from '../islands/island.ts';
import { marked, type Piece, readingOf } from '../pieces/piece.ts';
import { type Attributes, attributesOf, joinAttributes } from './attributes.ts';
import { itemsOf } from './exam.ts';
import { answeredTopic } from './history.ts';
import { sideIn } from './side-in.ts';
import { shareSides, withSides } from './sides.ts';
import { bear, type HowKnown, place, type Said, state, type Talk, textOf } from './talk.ts';

export type AnswerWord = 'yes' | 'no' | 'unsure';

/** How many pieces at the clause's start are the answer itself, and which answer it is. */
export function answerWord(
  clause: Clause,
): { readonly word: AnswerWord; readonly pieces: number; readonly severity: SeverityWord | null } | null {
  let word: AnswerWord | null = null;
  let severity: SeverityWord | null = null;
  let pieces = 0;
  for (const piece of clause.pieces) {
    const island = readingOf(piece, 'talk.answer');
    const said = island === null ? null : (tagOf(island, 'answer') as AnswerWord | null);
    if (island === null || said === null) {
      if (piece.role !== 'small' && piece.role !== 'talk') break;
      if (word === null) {
        pieces++;
        continue;
      }
      break;
    }
    if (word !== null && said !== word) break;
    word = said;
    severity ??= tagOf(island, 'severity') as SeverityWord | null;
    pieces++;
  }
  return word === null ? null : { word, pieces, severity };
}

/** States what the answer settles. Returns the pieces after it that still have to be read. */
export function answer(talk: Talk, clause: Clause): readonly Piece[] {
  const { asked } = talk.context;
  if (asked?.about === 'findings') {
    const bySide = sidesAnswered(clause);
    if (bySide !== null) return answerSides(talk, clause, asked, bySide);
  }
  const said = answerWord(clause);
  if (asked === null || said === null) return clause.pieces;
  const heads = clause.pieces.slice(0, said.pieces);
  const rest = clause.pieces.slice(said.pieces);
  const from = heads[0]?.from ?? 0;
  const to = heads.at(-1)?.to ?? 0;
  bear(talk, { asked: null });
  for (const piece of heads) place(talk, piece);
  if (asked.about === 'topic') return answerTopic(talk, asked, said.word, rest, from, to);
  if (asked.about === 'vital' || said.word === 'unsure') {
    unsettled(talk, from, clause.pieces.at(-1)?.to ?? to);
    return [];
  }
  if (asked.about === 'csm') {
    const known = { site: 'carried', aspect: 'carried', ...sideKnown(asked.ends[0]?.side ?? null) } as const;
    settle(
      talk,
      asked.ends.flatMap(({ site, side, digit }) =>
        asked.aspects.map((aspect): Said => {
          const statement: CsmStatement = {
            kind: 'csm',
            site,
            side,
            aspect,
            present: said.word === 'yes',
            ...(digit === undefined ? {} : { digit }),
          };
          return { statement, known, from, to };
        }),
      ),
    );
    return rest;
  }
  const explicit = heads.some((piece) => marked(piece, 'explicit'));
  return answerFindings(talk, asked, said.word, said.severity, rest, from, to, explicit);
}

interface SideAnswer {
  readonly side: Side;
  readonly word: AnswerWord;
}

/** "The left one yes, the right one no": each side with its answer, or null where the clause is of another form. */
function sidesAnswered(clause: Clause): readonly SideAnswer[] | null {
  const out: SideAnswer[] = [];
  let side: Side | null = null;
  for (const piece of clause.pieces) {
    if (piece.role === 'small' || piece.role === 'talk') continue;
    const answered = readingOf(piece, 'talk.answer');
    if (piece.role === 'side') side = sideIn([piece])?.side ?? null;
    else if (answered !== null && side !== null) {
      out.push({ side, word: (tagOf(answered, 'answer') ?? 'unsure') as AnswerWord });
      side = null;
    } else return null;
  }
  return out.length > 0 && side === null ? out : null;
}

function answerSides(
  talk: Talk,
  clause: Clause,
  asked: Extract<Asked, { about: 'findings' }>,
  answers: readonly SideAnswer[],
): readonly Piece[] {
  const [from, to] = [clause.pieces[0]?.from ?? 0, clause.pieces.at(-1)?.to ?? 0];
  if (asked.sites.length === 0 || asked.negative || answers.some(({ word }) => word === 'unsure')) {
    unsettled(talk, from, to);
    return [];
  }
  bear(talk, { asked: null });
  const known: HowKnown = { site: 'carried', finding: 'carried' };
  settle(
    talk,
    answers.flatMap(({ side, word }) =>
      asked.sites.flatMap((ref) =>
        asked.findings.map(
          ({ finding }): Said => ({
            statement: { kind: 'finding', site: ref.site, side, finding, present: word === 'yes' },
            known,
            from,
            to,
          }),
        ),
      ),
    ),
  );
  for (const piece of clause.pieces) place(talk, piece);
  return [];
}

const sideKnown = (side: unknown): { side: 'carried' } | Record<never, never> =>
  side === null ? {} : { side: 'carried' };

function settle(talk: Talk, said: readonly Said[]): void {
  state(talk, said);
  talk.asking = [];
}

/** Keeps question and answer in words where the answer settles nothing. */
function unsettled(talk: Talk, from: number, to: number): void {
  const text = textOf(talk, from, to);
  state(talk, [{ statement: { kind: 'note', text }, from, to }]);
}

function answerFindings(
  talk: Talk,
  asked: Extract<Asked, { about: 'findings' }>,
  word: AnswerWord,
  severity: SeverityWord | null,
  rest: readonly Piece[],
  from: number,
  to: number,
  explicit: boolean,
): readonly Piece[] {
  const says = rest.some((piece) => piece.role === 'finding' && !piece.weak) && !echoes(asked, rest);
  // "I do" and "yes, a little" settle a question put in the negative; a bare "yes" does not.
  const settled = explicit || severity !== null;
  const ambiguous = word === 'yes' && ((asked.negative && !settled) || asked.findings.length > 1);
  if (asked.sites.length === 0 && word === 'no') {
    deniesAll(talk, asked, from, to);
    return rest;
  }
  if (asked.sites.length === 0 || (ambiguous && !says)) {
    unsettled(talk, from, rest.at(-1)?.to ?? to);
    for (const piece of rest) place(talk, piece);
    return [];
  }
  if (ambiguous) return rest;
  // "Yeah, tender right there": the answer's own words say more than the question did.
  const repeats = word === 'yes' && says;
  if (repeats) return rest;
  const extra = word === 'yes' ? extrasOf(rest) : { attributes: {}, pieces: [] };
  const sites = word === 'yes' ? sitesSaid(talk, rest, asked.sites) : asked.sites;
  const attributes = joinAttributes(severity === null ? {} : { severity }, extra.attributes);
  settle(
    talk,
    sites.flatMap((ref) =>
      asked.findings.map(({ finding, quality }): Said => {
        const { severity: bad, size, part, quality: more } = attributes;
        const qualities = word === 'yes' ? [...quality, ...(more ?? [])] : [];
        const parts = [...new Set([...ref.parts, ...(part ?? [])])];
        const statement: FindingStatement = {
          kind: 'finding',
          site: ref.site,
          side: ref.side,
          finding,
          present: word === 'yes',
          ...(parts.length > 0 ? { part: parts } : {}),
          ...(ref.level === null ? {} : { level: ref.level }),
          ...(size === undefined ? {} : { size }),
          ...(bad === undefined ? {} : { severity: bad }),
          ...(qualities.length > 0 ? { quality: qualities } : {}),
        };
        return {
          statement,
          known: {
            site: 'carried',
            finding: 'carried',
            ...(sites === asked.sites ? sideKnown(ref.side) : {}),
          },
          from,
          to: extra.to ?? to,
        };
      }),
    ),
  );
  place(talk, ...extra.pieces);
  const echoed = echoes(asked, rest) ? rest.filter(({ role }) => role === 'finding') : [];
  place(talk, ...echoed);
  const taken = word === 'yes' || sites !== asked.sites;
  return rest.filter(
    (piece) =>
      !extra.pieces.includes(piece) &&
      !echoed.includes(piece) &&
      !(taken && (piece.role === 'site' || piece.role === 'side')),
  );
}

// "Does it hurt when I press?" "Yeah, that hurts": the answer repeats the question, whose word is the better one.
function echoes(asked: Extract<Asked, { about: 'findings' }>, rest: readonly Piece[]): boolean {
  const hurt = (finding: string | null) => finding === 'pain' || finding === 'tenderness';
  const said = rest
    .filter(({ role }) => role === 'finding')
    .map((piece) => tagOf(readingOf(piece, 'findings.finding') ?? NOTHING, 'finding'));
  return (
    said.length > 0 &&
    said.every(hurt) &&
    asked.findings.every(({ finding }) => hurt(finding)) &&
    !rest.some(({ role }) => role === 'site')
  );
}

const NOTHING = { file: '', rule: '', from: 0, to: 0, tags: [], slots: [], cost: 0 };

// "Any numbness anywhere?" "No": it has no one site, so it is a symptom denied in the words of the question.
function deniesAll(talk: Talk, asked: Extract<Asked, { about: 'findings' }>, from: number, to: number): void {
  const text = `${asked.text}: ${textOf(talk, from, to)}`;
  state(talk, [
    {
      statement: { kind: 'history', topic: 'symptoms', text, present: false },
      known: { topic: 'inferred' },
      from,
      to,
    },
  ]);
}

/** "Are you bleeding anywhere?" "Just my nose": a site alone answers where; false where the clause says more or else. */
export function answersWithSite(
  talk: Talk,
  clause: Clause,
  asked: Extract<Asked, { about: 'findings' }>,
): boolean {
  const phrases = itemsOf(talk, clause.pieces).flatMap((item) => (item.type === 'site' ? [item.phrase] : []));
  const plain = clause.pieces.every((piece) => PLAIN.has(piece.role) && !marked(piece, 'negation', 'before'));
  if (!plain || phrases.length === 0 || asked.negative || asked.findings.length > 1) return false;
  if (asked.sites.length > 0 && !phrases.every((phrase) => phrase.mine)) return false;
  const refs = shareSides(phrases.flatMap((phrase) => withSides(phrase, [])));
  const [from, to] = [clause.pieces[0]?.from ?? 0, clause.pieces.at(-1)?.to ?? 0];
  bear(talk, { asked: null, sites: refs.map((ref) => ({ ...ref, parts: [], level: null })) });
  settle(
    talk,
    refs.flatMap((ref) =>
      asked.findings.map(({ finding, quality }): Said => {
        const statement: FindingStatement = {
          kind: 'finding',
          site: ref.site,
          side: ref.side,
          finding,
          present: true,
          ...(ref.parts.length > 0 ? { part: ref.parts } : {}),
          ...(quality.length > 0 ? { quality } : {}),
        };
        const known: HowKnown = {
          finding: 'carried',
          present: 'inferred',
          ...(ref.sideKnown === 'inferred' ? { side: 'inferred' as const } : {}),
        };
        return { statement, known, from, to };
      }),
    ),
  );
  for (const piece of clause.pieces) place(talk, piece);
  return true;
}

const PLAIN: ReadonlySet<string> = new Set(['site', 'side', 'part', 'small', 'talk', 'negation']);

// "A little bit, in the left hand", "yeah, on the right side": the answer says itself where.
function sitesSaid(talk: Talk, rest: readonly Piece[], asked: readonly SiteRef[]): readonly SiteRef[] {
  const phrases = itemsOf(talk, rest).flatMap((item) => (item.type === 'site' ? [item.phrase] : []));
  if (phrases.length > 0) {
    for (const phrase of phrases) place(talk, phrase);
    const refs = shareSides(phrases.flatMap((phrase) => withSides(phrase, asked)));
    bear(talk, { sites: refs.map((ref) => ({ ...ref, parts: [], level: null })) });
    return refs;
  }
  const side = sideIn(rest);
  if (side === null) return asked;
  for (const piece of rest) if (piece.role === 'side') place(talk, piece);
  return asked.map((ref) => ({ ...ref, side: side.side, sideKnown: 'spoken' }));
}

function extrasOf(rest: readonly Piece[]): { attributes: Attributes; pieces: readonly Piece[]; to?: number } {
  const pieces: Piece[] = [];
  let attributes: Attributes = {};
  for (const piece of rest) {
    const said = attributesOf(piece);
    if (said === null) {
      if (piece.role === 'small' || piece.role === 'talk') continue;
      break;
    }
    attributes = joinAttributes(attributes, said);
    pieces.push(piece);
  }
  const last = pieces.at(-1);
  return { attributes, pieces, ...(last === undefined ? {} : { to: last.to }) };
}

function answerTopic(
  talk: Talk,
  asked: Extract<Asked, { about: 'topic' }>,
  word: AnswerWord,
  rest: readonly Piece[],
  from: number,
  to: number,
): readonly Piece[] {
  const end = rest.at(-1)?.to ?? to;
  const free = rest.some((piece) => piece.role !== 'small' && piece.role !== 'talk')
    ? answeredTopic(talk, asked.topic, to, end)
    : null;
  const { topic } = asked;
  if (word === 'unsure') {
    unsettled(talk, from, end);
    return [];
  }
  if (free !== null && !rest.some((piece) => piece.role === 'history')) {
    state(talk, [{ statement: free.statement, known: free.known, from, to: end }]);
    place(talk, { from, to: end });
    return [];
  }
  if (word === 'no')
    state(talk, [
      {
        statement: {
          kind: 'history',
          topic,
          text:
            asked.item === undefined ? textOf(talk, from, to) : `${asked.item}: ${textOf(talk, from, to)}`,
          present: false,
        },
        known: { topic: 'carried' },
        from,
        to,
      },
    ]);
  // "Yes" alone to a question of history waits for what it is.
  else if (rest.length === 0) bear(talk, { asked });
  return rest;
}
