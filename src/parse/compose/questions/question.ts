// Composes a question: its sites are borne in mind, and what it asks after stays open for the answer to take up.

import type { Clause } from '../../clauses/clause.ts';
import type { Asked, SiteRef } from '../../context.ts';
import { marked, type Role, tagIn } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { asksWhen } from '../corrections/asked-when.ts';
import { itemsOf } from '../exam/items.ts';
import { visitsOf } from '../exam/visits.ts';
import { withLimbPulse } from '../limb-pulse.ts';
import { isJoin } from '../sayings/index.ts';
import { phrasesIn } from '../sites/item.ts';
import { sideIn } from '../sites/side-in.ts';
import { plainSite } from '../sites/site-ref.ts';
import { bear, place, type Said, type Talk, textOf } from '../talk.ts';
import { askedOf, mindOf } from './asked.ts';
import { asksOfBefore } from './asks-before.ts';
import { withoutFarSide } from './far-side.ts';
import { lookOver } from './look-over.ts';
import { isLook } from './standing.ts';
import { asksUsual } from './usual.ts';

/** Opens the question of a clause; its sites become visits where nobody answers. */
export function ask(talk: Talk, said: Clause): void {
  const clause = { ...said, pieces: withLimbPulse(said.pieces) };
  // "I had a rash on my chest last year." "Any rash there now?"
  const { recalled } = talk.context;
  if (recalled.length > 0 && pointsBack(talk, clause)) bear(talk, { sites: recalled });
  const items = itemsOf(talk, clause.pieces);
  // "Did you hit your head?" asks what happened, and nobody looks there.
  const happened = asksWhatHappened(talk, clause);
  const looks = happened || asksWhereTo(said) ? [] : visitsOf(talk, items, new Set());
  const visits = looks.map((look) => withoutFarSide(talk, clause, look));
  talk.asking = [...talk.asking, ...visits];
  if (visits.length > 0) {
    const refs = phrasesIn(items).flatMap((phrase) => phrase.sites);
    const sites = visits.flatMap(({ statement }) =>
      statement.kind === 'visit' ? [plainSite(statement.site, statement.side)] : [],
    );
    bear(talk, { sites: sites.map((ref, i) => asSaid(ref, refs[i])) });
  }
  bear(talk, { isSaidLast: false });
  const { from, to } = spanned(clause.pieces);
  const goesFrom = asksWhereItGoes(talk, said);
  const meant = happened
    ? askedOfTopic('events', textOf(talk, from, to))
    : goesFrom !== null
      ? askedOfTopic('radiation', textOf(talk, goesFrom, to))
      : askedOf(talk, clause, items);
  const asked = isAgeOfAnother(clause, meant) ? null : meant;
  // "Does it bend?" asks what somebody can do.
  const isOfSubstance = clause.pieces.some(
    (piece) => (!piece.weak && SUBSTANCE.has(piece.role)) || marked(piece, 'mood', 'instruction'),
  );
  // "Here?" after another question asks it again, and its answer is kept beside it.
  const goesOn = talk.context.askedBefore !== null || asksOn(talk, said);
  const ofBefore = asksOfBefore(textOf(talk, from, to));
  const isKept = isOfSubstance || goesOn || ofBefore || asksWhen(textOf(talk, from, to));
  bear(talk, { question: isKept ? textOf(talk, from, to) : null });
  // "What's your pressure normally?": its answer is no reading of now.
  if (asked?.about === 'vital' && asksUsual(textOf(talk, from, to))) {
    bear(talk, { asked: null, question: textOf(talk, from, to) });
    place(talk, ...clause.pieces);
    return;
  }
  if (asked === null) {
    lookOver(talk, clause);
    // "Is that new?" "No.": what was asked before is not answered by it.
    if (isOfSubstance || ofBefore)
      bear(talk, { asked: null, ...(isStanding(talk) ? { askedBefore: null } : {}) });
    return;
  }
  place(talk, ...clause.pieces);
  if (visits.length === 0) talk.asking = [...talk.asking, ...otherSideVisits(clause, asked)];
  const mind = visits.length > 0 ? talk.context.sites : mindOf(talk, clause);
  bear(talk, { asked, askedBefore: asked, sites: turnedTo(asked, mind) });
  if (asked.about === 'findings') talk.questions = [...talk.questions, asked];
}

const pointsBack = ({ tokens }: Talk, { pieces }: Clause): boolean =>
  !pieces.some(({ role }) => role === 'site') &&
  tokens.slice(pieces[0]?.from, pieces.at(-1)?.to).some(({ word }) => word === 'there');

// "And the right one", which only the talk before it makes a question: that side was looked at at least.
function otherSideVisits({ pieces, pause }: Clause, asked: Asked): readonly Said[] {
  const [first] = pieces;
  if (
    pause === 'ask' ||
    first === undefined ||
    !isJoin(first) ||
    pieces.some(({ role }) => role === 'site') ||
    sideIn(pieces) === null
  )
    return [];
  const refs = asked.about === 'findings' ? asked.sites : asked.about === 'csm' ? asked.ends : [];
  return refs.map(({ site, side }) => ({
    statement: { kind: 'visit', site, side },
    known: { site: 'carried' },
    ...spanned(pieces),
  }));
}

// "Can you feel this?" "No." "What about this?"
const asksOn = ({ context, tokens, clauses }: Talk, clause: Clause): boolean => {
  const [first] = clause.pieces;
  const before = clauses[clauses.indexOf(clause) - 1];
  return (
    (context.question !== null || context.asking || before?.mood === 'answer') &&
    first?.role === 'asking' &&
    /^(what|how) about$/.test(saidIn(tokens, first.from, first.to))
  );
};

const isStanding = ({ context: { askedBefore } }: Talk): boolean =>
  askedBefore?.about === 'findings' && askedBefore.standing === true;

// "And on the right?": what comes next is of that side.
function turnedTo(asked: Asked, mind: readonly SiteRef[]): readonly SiteRef[] {
  const [first] = asked.about === 'findings' ? asked.sites : asked.about === 'csm' ? asked.ends : [];
  const side = first?.side ?? null;
  return side !== null && mind.every((ref) => ref.side !== null && ref.side !== side)
    ? mind.map((ref) => ({ ...ref, side, sideKnown: 'spoken' }))
    : mind;
}

const asksWhatHappened = ({ tokens }: Talk, { pieces }: Clause): boolean => {
  const [first, next] = pieces.filter(({ role }) => role !== 'talk');
  if (first?.role !== 'asking' || next === undefined || !pieces.some(({ role }) => role === 'site'))
    return false;
  if (!/^(did|have|has)$/.test(tokens[first.from]?.word ?? '')) return false;
  const isOfSomebody = PERSON.test(tokens[first.to - 1]?.word ?? '');
  const hurts = isOfSomebody && HURT.test(tokens[next.from]?.word ?? '');
  return hurts || (next.role === 'unknown' && tokens[first.from]?.word === 'did');
};

// "Does it go through to your back?" asks where the pain goes, and nobody looks there.
const asksWhereTo = ({ pieces }: Clause): boolean =>
  pieces.some((piece) => tagIn(piece, 'history.ask', 'asks') === 'radiation');

const PERSON = /^(you|he|she|they)$/;
// Somebody hurt his wrist: so it happened, and nothing is said of how it feels.
const HURT =
  /^(hurt|injured?|break|broken?|fractured?|bruised?|cut|burn(?:ed|t)?|scraped?|grazed?|sprained?|dislocated?|crush(?:ed)?)$/;

// "Does the neck pain shoot down your arms?" asks where it goes, and a "no" leaves the pain where it is.
function asksWhereItGoes({ tokens, clauses }: Talk, clause: Clause): number | null {
  // "Does the back pain run down your legs?": "run down" may begin a clause of its own.
  const before = clauses[clauses.indexOf(clause) - 1];
  const isOne = before?.mood === 'question' && before.pause === '';
  const pieces = isOne ? [...before.pieces, ...clause.pieces] : clause.pieces;
  const { from, to } = spanned(pieces);
  const words = tokens.slice(from, to).map(({ word }) => word);
  const isPain = pieces.some((piece) => marked(piece, 'finding', 'pain'));
  return isPain && GOES.test(words.join(' ')) ? from : null;
}

const GOES = /\b(shoot|radiate|spread|travel|go|run|move) (down|into|to|up|through|across|along|anywhere)\b/;

const askedOfTopic = (topic: 'events' | 'radiation', item: string): Asked => ({
  about: 'topic',
  topic,
  item,
});

const SUBSTANCE: ReadonlySet<Role> = new Set([
  'site',
  'finding',
  'csm',
  'history',
  'vital',
  'care',
  'unknown',
  'ask',
  'side',
]);

// "How old's your son?"
const isAgeOfAnother = ({ pieces }: Clause, asked: Asked | null): boolean =>
  asked?.about === 'topic' &&
  asked.topic === 'age' &&
  pieces.some((piece) => marked(piece, 'mood', 'others'));

// A visit keeps the site and its side; the spot on it, and how its side was known, stand in the words.
const asSaid = (visited: SiteRef, said: SiteRef | undefined): SiteRef => ({
  ...visited,
  sideKnown: said?.sideKnown ?? (visited.side === null ? null : 'carried'),
  parts: said?.parts ?? [],
  level: said?.level ?? null,
});

/** Opens the question of "tell me if it hurts" about the site in mind, without a visit where nobody answers. */
export function askQuietly(talk: Talk, clause: Clause): void {
  const one = askedOf(talk, clause, itemsOf(talk, clause.pieces));
  if (one?.about !== 'findings') return;
  const asked: Asked = { ...one, standing: true };
  // "Tell me if anything hurts. Scalp?": with no site in mind the next ones are asked after so. "Feeling down the spine, shout if
  // it hurts anywhere": that is asked of the place that is felt.
  const looked = talk.clauses[talk.clauses.indexOf(clause) - 1];
  const isOfLook = asked.sites.length === 0 && looked !== undefined && isLook(looked);
  const open = isOfLook ? { ...asked, sites: talk.context.sites } : asked;
  bear(talk, open.sites.length > 0 ? { asked: open, askedBefore: asked } : { askedBefore: asked });
}
