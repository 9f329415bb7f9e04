// Whether a finding is said of something that is no place on the body: "the rest is soft", "his helmet is cracked".

import { isLikely, isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, pieceOf, wordsOf } from '../sites/item.ts';

const REST: ReadonlySet<string> = new Set(['rest', 'else', 'elsewhere', 'remainder']);

/** True for "tender upper right, rest is soft": what is said of the rest is said of no place that was named. */
export const isOfTheRest = (items: readonly Item[], tokens: readonly Token[], i: number): boolean =>
  isOfOthers(tokens, wordsOf(items[i] as Item).from) ||
  wordsBefore(items, tokens, i).some((piece) =>
    tokens.slice(piece.from, piece.to).some(({ word }) => REST.has(word)),
  );

// "The other three soft", "the others are fine".
const isOfOthers = (tokens: readonly Token[], from: number): boolean =>
  /\b(?:others|other (?:two|three|four|ones))(?: is| are| look| looks| feel)?$/.test(
    saidIn(tokens, Math.max(0, from - 3), from),
  );

/** True for "tender everywhere", "sore all over": it is said of no place in mind. */
export const isAllOver = (tokens: readonly Token[], { to }: Piece): boolean => {
  const [next, after] = tokens[to - 1]?.pause === '' ? [tokens[to], tokens[to + 1]] : [];
  if (next?.word === 'everywhere') return true;
  return (
    next?.word === 'all' && after?.word === 'over' && (after.pause !== '' || tokens[to + 2] === undefined)
  );
};

/** True for "soft elsewhere", "no cuts anywhere else": it is said of no place that was named, nor of one in mind. */
export const isElsewhere = (tokens: readonly Token[], { to }: Piece): boolean => {
  const [next, after] = tokens[to - 1]?.pause === '' ? [tokens[to], tokens[to + 1]] : [];
  return next?.word === 'elsewhere' || (/^(any|some)where$/.test(next?.word ?? '') && after?.word === 'else');
};

/** True for "when asked about neck pain": what somebody was asked after is not told by it. */
export function isAskedAbout(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  for (let k = i - 1; k >= 0; k--) {
    const words = items[k] === undefined ? null : wordsOf(items[k] as Item);
    if (words === null || isPaused(tokens, words)) return false;
    const isAbout = tokens.slice(words.from, words.to).some(({ word }) => word === 'about');
    if (isAbout && ASKED.test(wordsUpTo(tokens, words.from))) return true;
  }
  return false;
}

const ASKED = /\b(asked|ask|asks|asking)( (him|her|them|you))?$/;

const wordsUpTo = (tokens: readonly Token[], at: number): string => saidIn(tokens, Math.max(0, at - 2), at);

const ALL: ReadonlySet<string> = new Set([
  'everything',
  'nothing',
  'anything',
  'all',
  'feeling',
  'sensation',
]);
const PAST: ReadonlySet<string> = new Set(['above', 'below', 'beyond', 'till', 'until']);

/** True for "everything below the waist is normal": what a place only bounds is no place of the record. */
export const isOfARegion = (items: readonly Item[], tokens: readonly Token[], i: number): boolean =>
  items.slice(0, i).some((item) => {
    const { from } = wordsOf(item);
    const isLed = PAST.has(tokens[from]?.word ?? '') && item.type === 'piece';
    return isLed && ALL.has(tokens[from - 1]?.word ?? '');
  });

const THINGS: ReadonlySet<Role> = new Set(['unknown', 'vital', 'care']);

/** What a thing can be as well as a bone or a limb. */
const OF_THINGS =
  /^(broken|bent|cracked|torn|ripped|snapped|split|dented|twisted|crushed|smashed|shattered|normal|fine|okay|ok|good|clear|clean|unremarkable)$/;

// "Glasses broken", "one pole bent", "skin normal", with no verb: a thing opens what is said, and no site stands by it.
function isBareThing(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const [thing, said] = [pieceOf(items[i - 1]), pieceOf(items[i])];
  if (thing?.role !== 'unknown' || said === null || isPaused(tokens, thing)) return false;
  // "Obviously broken" is said of the site in mind.
  if (/ly$/.test(tokens[thing.from]?.word ?? '') || !OF_THINGS.test(tokens[said.from]?.word ?? ''))
    return false;
  return items.slice(0, i - 1).every((item) => isLead(pieceOf(item)));
}

// "A weak layer a hand deep": what stands straight behind it is what is weak.
function isWeakThing(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const [said, thing] = [pieceOf(items[i]), pieceOf(items[i + 1])];
  if (said === null || thing?.role !== 'unknown' || isPaused(tokens, said)) return false;
  // "Weak flexion of the fingers" is theirs.
  if (tokens[thing.to]?.word === 'of') return false;
  return /^weak(er)?$/.test(tokens[said.from]?.word ?? '') && !/ly$/.test(tokens[thing.from]?.word ?? '');
}

const isLead = (piece: Piece | null): boolean =>
  piece !== null && (piece.role === 'small' || piece.role === 'figure' || piece.role === 'unknown');

// "Holds it like a broken wing": what it is likened to is so, and no place.
function isLikeness(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const [said, thing] = [pieceOf(items[i]), pieceOf(items[i + 1])];
  if (said === null || thing?.role !== 'unknown' || isPaused(tokens, said)) return false;
  return /\blike (a|an|the|some)$/.test(saidIn(tokens, Math.max(0, said.from - 2), said.from));
}

/** True for "his helmet is broken", "the ski has a dent", "glasses broken": what it is said of is nothing that a body has. */
export function isOfAThing(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  if (isLikeness(items, tokens, i)) return true;
  // "A branch is impaled in the calf": the thing is in the body.
  const sticks = pieceOf(items[i]);
  if (sticks !== null && marked(sticks, 'finding', 'impaled-object')) return false;
  if (isBareThing(items, tokens, i) || isWeakThing(items, tokens, i)) return true;
  // "The strap is torn and broken": what "and" joins is said of the same.
  const [join, other] = [items[i - 1], items[i - 2]];
  if (isSmallItem(join, 'join') && hasRole(other, 'finding') && !isPaused(tokens, wordsOf(other as Item)))
    return isOfAThing(items, tokens, i - 2);
  // "The brakes are bleeding fluid": what stands straight behind it is the thing's too.
  if (hasRole(items[i - 1], 'finding') && !isPaused(tokens, wordsOf(items[i - 1] as Item)))
    return isOfAThing(items, tokens, i - 1);
  const before = wordsBefore(items, tokens, i);
  const first = before[0];
  const at = items.findIndex((item) => pieceOf(item) === first);
  const subject = pieceOf(items[(first === undefined ? i : at) - 1]);
  if (subject === null || isPaused(tokens, subject)) return false;
  if (!THINGS.has(subject.role) && !isLikely(subject, 'machine')) return false;
  const isNumber = subject.role === 'vital' && (subject.islands[0]?.slots.length ?? 0) > 0;
  return !isNumber && (links(tokens, before[0]) || isContracted(tokens, subject));
}

const RUNS: readonly string[] = ['bleeding', 'fluid'];
const ON: ReadonlySet<string> = new Set(['on', 'from', 'over', 'inside']);

/**
 * True for "no blood on my gloves", "fluid on the snow": what runs can be on a thing, and no site in mind has it then. What does
 * not ("tender over the fleshy bit") is on the body, whatever its place was called.
 */
export function isOnAThing(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const [said, words] = [pieceOf(items[i]), items.slice(i + 1)];
  if (said === null || isPaused(tokens, said) || !RUNS.some((one) => marked(said, 'finding', one)))
    return false;
  const [first] = words;
  const piece = pieceOf(first);
  const lead = piece === null ? '' : (tokens[piece.from]?.word ?? '');
  // "Any blood in it?" asks of what was brought up or passed.
  if (piece !== null && lead === 'in' && IT.test(tokens[piece.to]?.word ?? '')) return true;
  if (piece === null || !ON.has(lead)) return false;
  if (piece.role === 'talk') return true;
  const next = words.slice(1).find((item) => !isOwnerOrArticle(item));
  return piece.role === 'small' && pieceOf(next)?.role === 'unknown';
}

const IT = /^(it|that|them)$/;

const isOwnerOrArticle = (item: Item): boolean => {
  const piece = pieceOf(item);
  return piece !== null && (isSmall(piece, 'article') || isSmall(piece, 'owner'));
};

// "An ugly looking bruise" is a bruise.
const links = (tokens: readonly Token[], piece: Piece | undefined): boolean =>
  piece !== undefined && isSmall(piece, 'link') && !(tokens[piece.from]?.word ?? '').endsWith('ing');

// "Ski's broken": the verb is in the word as it was written, though not in the token.
const isContracted = (tokens: readonly Token[], { to }: Piece): boolean => {
  const last = tokens[to - 1];
  return last !== undefined && last.to - last.from > last.word.length;
};

/** The small words and attributes that lead to item `i` without a pause, in the order said. */
function wordsBefore(items: readonly Item[], tokens: readonly Token[], i: number): readonly Piece[] {
  const words: Piece[] = [];
  for (let k = i - 1; k >= 0; k--) {
    const piece = pieceOf(items[k]);
    if (piece === null || isPaused(tokens, piece)) break;
    if (piece.role !== 'small' && piece.role !== 'attribute' && piece.role !== 'negation') break;
    words.unshift(piece);
  }
  return words;
}
