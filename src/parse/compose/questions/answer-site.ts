// Answers that say themselves where: "just my nose", "a little bit, in the left hand", "yeah, on the right side".

import type { Clause } from '../../clauses/clause.ts';
import type { SiteRef } from '../../context.ts';
import { isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused, spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import type { StateAll } from '../corrections/dry-run.ts';
import { itemsOf } from '../exam/items.ts';
import { findingStatement } from '../findings/finding-statement.ts';
import { phrasesIn, type SitePhrase } from '../sites/item.ts';
import { sideIn } from '../sites/side-in.ts';
import { sitesOf } from '../sites/sides.ts';
import { wholeSite } from '../sites/site-ref.ts';
import { bear, type HowKnown, note, place, type Talk } from '../talk.ts';
import { type AskedFindings, settle, settledOf } from './settle.ts';
import { isWithinAny } from './within.ts';

/** The sites of a yes: those its own words name, those asked after on the side it names, or else those asked after. */
export function sitesOfAnswer(
  talk: Talk,
  rest: readonly Piece[],
  asked: readonly SiteRef[],
): readonly SiteRef[] {
  // "A little, and not sure about the knee."
  const isOther = rest.some((piece) => piece.role === 'answer' && marked(piece, 'answer', 'unsure'));
  // "A little, and the teeth are all there": an "and" leads on, unless nothing but a place follows it.
  const [first] = rest;
  const leadsOn = first !== undefined && isSmall(first, 'join') && !isWhereAlone(talk, rest);
  // "Yes, not my back": what is named is where it is not.
  const isDenied = rest.some(({ from, to }) => saidIn(talk.tokens, from, to) === 'not');
  const phrases = isOther || leadsOn || isDenied ? [] : phrasesIn(itemsOf(talk, rest));
  if (phrases.length > 0) {
    place(talk, ...phrases);
    const refs = sitesOf(phrases, asked);
    bear(talk, { sites: refs.map(wholeSite) });
    // "Yes, and my back."
    return first !== undefined && isSmall(first, 'join') ? [...asked, ...refs] : refs;
  }
  const side = sideIn(rest)?.side ?? null;
  if (side === null) return asked;
  place(talk, ...rest.filter(({ role }) => role === 'side'));
  return asked.map((ref) => ({ ...ref, side, sideKnown: 'spoken' }));
}

const PLAIN: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'talk', 'negation']);

// A place alone does not say which of several is there, nor whether "okay" was said of it.
const isUnclear = ({ negative, findings }: AskedFindings): boolean =>
  negative || findings.length > 1 || findings.some(({ present }) => !present);

/** "Are you bleeding anywhere?" "Just my nose": a site alone answers where; false where the clause says more or else. */
export function answersWithSite(talk: Talk, { pieces }: Clause, asked: AskedFindings): boolean {
  const phrases = placesAlone(talk, pieces);
  if (phrases.length === 0 || isUnclear(asked)) return false;
  const isOwn =
    phrases.every((phrase) => phrase.mine) ||
    isOnlyWithin(talk, pieces, phrases, asked) ||
    isOneOfThem(phrases, asked);
  const isAnywhere = asked.sites.length > 0 && ANYWHERE.test(asked.text);
  if (asked.sites.length > 0 && !isOwn && !isAnywhere) return false;
  const looks = talk.asking;
  isThere(talk, pieces, phrases, asked, isOneOfThem(phrases, asked) ? asked.sites : []);
  // The jaw was felt, wherever it hurt.
  if (isAnywhere) talk.asking = settledOf(talk, looks);
  return true;
}

const OTHERS = /^(the|my|all) (rest|others)$/;

/** "Where does it hurt?" "My left wrist, I put my arm out": the place is said in the first breath; false where the next may take it back. */
export function answersWhereFirst(
  talk: Talk,
  clause: Clause,
  asked: AskedFindings,
  stateAll: StateAll,
): boolean {
  const { pieces } = clause;
  // "Only my left thumb, the others are fine": how they are is said of no place.
  const others = pieces.findIndex(({ from }) => OTHERS.test(saidIn(talk.tokens, from, from + 2)));
  if (others > 0 && answersWithSite(talk, { ...clause, pieces: pieces.slice(0, others) }, asked)) {
    const beside = spanned(pieces.slice(others));
    note(talk, beside);
    place(talk, beside);
    return true;
  }
  const end = pieces.findIndex((piece) => isPaused(talk.tokens, piece)) + 1;
  const rest = pieces.slice(end);
  const turns = rest.some(
    (piece) =>
      marked(piece, 'negation', 'before') ||
      marked(piece, 'negation', 'after') ||
      marked(piece, 'answer', 'no') ||
      marked(piece, 'present', 'false'),
  );
  if (end === 0 || rest.length === 0 || turns || asked.sites.length > 0) return false;
  if (!answersWithSite(talk, { ...clause, pieces: pieces.slice(0, end) }, asked)) return false;
  stateAll(talk, rest);
  return true;
}

// "Is it your left arm or your left leg that hurts?" "The leg.", "which hip?" "Right hip.".
const isOneOfThem = (phrases: readonly SitePhrase[], { either, sites }: AskedFindings): boolean =>
  either &&
  phrases.every((phrase) => phrase.sites.every(({ site }) => sites.some((one) => one.site === site)));

// "Pressing along the jaw, sore anywhere?" "By the ear."
const ANYWHERE = /\b(anywhere|any (place|spot|part)|where)\b/i;

// "Is your tummy tender?" "Only up here, upper right."
function isOnlyWithin(
  { tokens }: Talk,
  pieces: readonly Piece[],
  phrases: readonly SitePhrase[],
  asked: AskedFindings,
): boolean {
  const { from, to } = spanned(pieces);
  const says = tokens.slice(from, to).some(({ word }) => word === 'only' || word === 'just');
  const outer = asked.sites.map(({ site }) => site);
  return says && phrases.every(({ sites }) => sites.every(({ site }) => isWithinAny(site, outer)));
}

/** "Is your hip sore?" "No, my thigh": after the no, a place of the patient's own says where; false where more is said. */
export function answersElsewhere(talk: Talk, rest: readonly Piece[], asked: AskedFindings): boolean {
  const phrases = placesAlone(talk, rest);
  if (phrases.length === 0 || isUnclear(asked) || !phrases.every((phrase) => phrase.mine)) return false;
  return isThere(talk, rest, phrases, asked);
}

/** True where the words after a yes name a place and nothing else: "a little, in the left knee". */
export function isWhereAlone({ tokens }: Talk, rest: readonly Piece[]): boolean {
  const isWhere = ({ role, from, to }: Piece): boolean =>
    role === 'site' ||
    role === 'side' ||
    role === 'part' ||
    role === 'attribute' ||
    (role === 'small' && tokens.slice(from, to).every(({ word }) => LEADS.test(word)));
  return rest.some(({ role }) => role === 'site') && rest.every(isWhere);
}

const LEADS =
  /^(in|on|over|at|around|round|from|along|across|by|near|of|the|my|his|her|your|their|this|that|a|and|just|only|mostly|mainly|here|there|up|down|both|it|is|side)$/;

/** The places that are all these pieces say; none where they say more. */
function placesAlone(talk: Talk, pieces: readonly Piece[]): readonly SitePhrase[] {
  const plain = pieces.every(
    (piece) => (PLAIN.has(piece.role) || marked(piece, 'guess')) && !marked(piece, 'negation', 'before'),
  );
  return plain ? phrasesIn(itemsOf(talk, pieces)) : [];
}

function isThere(
  talk: Talk,
  pieces: readonly Piece[],
  phrases: readonly SitePhrase[],
  asked: AskedFindings,
  of: readonly SiteRef[] = [],
): true {
  const refs = sitesOf(phrases, of);
  bear(talk, { asked: null, sites: refs.map(wholeSite) });
  settle(
    talk,
    refs.flatMap((ref) =>
      asked.findings.map(({ finding, quality }) => {
        const known: HowKnown = {
          finding: 'carried',
          present: 'inferred',
          ...(ref.sideKnown === 'inferred' ? { side: 'inferred' } : {}),
        };
        const statement = findingStatement(finding, { ...ref, level: null }, true, { quality });
        return { statement, known, ...spanned(pieces) };
      }),
    ),
  );
  place(talk, ...pieces);
  return true;
}

const ALONE: ReadonlySet<Role> = new Set(['side', 'small', 'talk']);

/** "Any pain in either knee?" "The left one": a side alone answers which; false where the clause says more or else. */
export function answersWithSide(talk: Talk, clause: Clause, asked: AskedFindings): boolean {
  const side = sideIn(clause.pieces)?.side ?? null;
  // "Just the left ones."
  const isOnly = ({ from, to }: Piece): boolean => /^(just|only)$/.test(saidIn(talk.tokens, from, to));
  const plain = clause.pieces.every((piece) => ALONE.has(piece.role) || isOnly(piece));
  if (!plain || isUnclear(asked) || (side !== 'left' && side !== 'right')) return false;
  const [site, other] = asked.sites;
  if (site === undefined || other !== undefined) return false;
  // "Right side next" goes on; "on the right", of a place without a side, answers.
  const goesOn = clause.pieces.some((piece) => isSmall(piece, 'turn'));
  // "Do your knees hurt?" "Just the left one": of both, one is named.
  const isOfBoth = site.side === null || site.side === 'both';
  if (!asked.either && (!isOfBoth || goesOn)) return false;
  bear(talk, { asked: null, sites: [{ ...wholeSite(site), side, sideKnown: 'spoken' }] });
  settle(
    talk,
    asked.findings.map(({ finding, quality }) => ({
      statement: findingStatement(finding, { ...site, side, sideKnown: 'spoken' }, true, { quality }),
      known: { site: 'carried', finding: 'carried', present: 'inferred' } as const,
      ...spanned(clause.pieces),
    })),
  );
  place(talk, ...clause.pieces);
  return true;
}
