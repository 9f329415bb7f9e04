// How far the patient's own words reach after the words that open a topic.

import type { Topic } from '../../../terms/index.ts';
import { isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused, pauseAfter, pauseBefore } from '../../span.ts';
import type { Token } from '../../token.ts';
import { isUsual } from '../care/usual.ts';

const STRONG: ReadonlySet<Role> = new Set([
  'vital',
  'history',
  'ask',
  'asking',
  'strike',
  'mark',
  'command',
  'csm',
  'same',
  'intention',
]);

// "Slipped on the ice" names no ice that was put on anybody: care breaks a text only where it was given.
const isStrong = (piece: Piece, paused: boolean): boolean =>
  piece.role === 'care'
    ? paused || marked(piece, 'on') || marked(piece, 'put') || marked(piece, 'verb')
    : STRONG.has(piece.role) && !(piece.role === 'intention' && piece.weak);

/**
 * Past the last token of the text that the first of these pieces opens: it runs on to the full stop, or to the next
 * thing that is stated in its own right. A `loose` text takes in more history that follows without a pause.
 */
export function endOfText(
  tokens: readonly Token[],
  pieces: readonly Piece[],
  loose: boolean,
  topic: Topic,
): number {
  let end = pieces[0]?.to ?? 0;
  for (let k = 1; k < pieces.length; k++) {
    const piece = pieces[k];
    if (piece === undefined) break;
    const pause = pauseAfter(tokens, pieces[k - 1] ?? { to: 1 });
    if (pause === 'end' || pause === 'ask') break;
    const isKind = k > 1 && pause === '' && isMedicine(tokens[piece.from]?.word);
    const isReason =
      topic === 'medications' &&
      (isKind ||
        namesReason(tokens, piece) ||
        isOfDrug(tokens, piece) ||
        (piece.role === 'care' && pause === '' && isUsual(tokens, piece)));
    // "Is meant to take them but does not": no question.
    const denies = piece.role === 'asking' && pieces[k + 1]?.role === 'negation';
    const isComplaint = topic === 'chief-complaint' && marked(piece, 'topic', 'symptoms') && pause === '';
    // "Described as squeezing": so it feels, and nobody squeezes.
    const isFelt = topic === 'quality' && piece.role === 'intention';
    // "Provoked by movement" checks no limb.
    const isMoved = topic === 'provocation' && piece.role === 'csm' && pause === '';
    if (
      !isReason &&
      !isComplaint &&
      !isFelt &&
      !isMoved &&
      !denies &&
      isStrong(piece, pause !== '') &&
      !(loose && piece.role === 'history' && pause === '' && goesOn(tokens, piece, topic))
    )
      break;
    // "Fell off the wall no neck pain left wrist swollen": what is found begins where it is told without a pause, too.
    if (pause === '' && k > 0 && loose && beginsFinding(tokens, pieces, k)) break;
    // "Who fell has a cut on his hand": what is so of him is told for itself.
    if (topic === 'mechanism' && isVerbOfWho(tokens, pieces, k)) break;
    // "Was drinking coffee when his chest began to hurt".
    if (topic === 'last-intake' && /^(when|while)$/.test(tokens[piece.from]?.word ?? '')) break;
    // "Allergic to kiwis, gets a rash": how it shows goes with it.
    const isReaction = topic === 'allergies' && REACTS.test(tokens[piece.from]?.word ?? '');
    if (pause !== '' && !isReaction && (startsStatement(pieces, k) || isLater(tokens, piece))) break;
    end = piece.to;
  }
  // "Allergic to codeine and takes ramipril": the word that leads on to what is stated next is no part of it.
  while (end > (pieces[0]?.to ?? 0) && LEADS_ON.test(tokens[end - 1]?.word ?? '')) end -= 1;
  return end;
}

// The first verb behind "who fell", where no "and" goes on with what happened.
const isVerbOfWho = (tokens: readonly Token[], pieces: readonly Piece[], k: number): boolean => {
  const [first, piece] = [pieces[0], pieces[k]];
  if (first === undefined || piece === undefined) return false;
  const isWho =
    /^(who|that)$/.test(tokens[first.from]?.word ?? '') ||
    /^(who|that)$/.test(tokens[first.from - 1]?.word ?? '');
  return (
    isWho &&
    /^(has|is|needs|says)$/.test(tokens[piece.from]?.word ?? '') &&
    !/^(and|then|who|that)$/.test(tokens[piece.from - 1]?.word ?? '')
  );
};

// "Last ate at noon, was" and "takes ramipril and he" break off where something else begins.
const LEADS_ON = /^(and|but|or|was|were|he|she|who|which|when|while)$/;

// "History of asthma and gout" goes on; "fell on the ice no loss of consciousness" tells of another thing.
function goesOn(tokens: readonly Token[], piece: Piece, topic: Topic): boolean {
  if (marked(piece, 'denied')) return false;
  return marked(piece, 'topic', topic) || JOINS.test(tokens[piece.from - 1]?.word ?? '');
}

const JOINS =
  /^(when|while|whilst|as|after|before|until|till|because|then|where|for|from|with|by|of|the|his|her|my)$/;

// "No neck pain", "left wrist is swollen", with nothing before them that makes them a part of what is told.
function beginsFinding(tokens: readonly Token[], pieces: readonly Piece[], k: number): boolean {
  const [piece, before] = [pieces[k], pieces[k - 1]];
  if (piece === undefined || before === undefined) return false;
  if (before.role === 'small' && !isSmall(before, 'word')) return false;
  const near = pieces.slice(k, k + 4);
  const last = near.findIndex((one) => isPaused(tokens, one));
  const rest = near.slice(1, last < 0 ? near.length : last + 1);
  const isFound = (next: Piece | undefined): boolean => next?.role === 'finding' && !next.weak;
  const { word = '' } = tokens[piece.from] ?? {};
  if (marked(piece, 'negation', 'before') && /^(no|denies)$/.test(word))
    return isFound(rest.find(({ role }) => role !== 'site' && role !== 'side'));
  const [site, ...behind] = piece.role === 'side' ? rest : [piece, ...rest];
  // "Landed on his left hip": a side or a place that belongs to what stands before it.
  const isBare = piece.role === 'side' ? word === 'left' || word === 'right' : !PLACES.has(before.role);
  return isBare && site?.role === 'site' && isFound(behind.find((one) => !isSmall(one, 'link')));
}

const PLACES: ReadonlySet<Role> = new Set(['side', 'part', 'site']);

const REACTS = /^(gets|got|comes|came|breaks|swells|goes|reacts)$/;

// "Trapped under it for an hour, freed at ten": the time is of the freeing.
const isLater = (tokens: readonly Token[], { from }: Piece): boolean =>
  /^(freed|released|extricated|rescued|rechecked|severity)$/.test(tokens[from]?.word ?? '');

/** True for what a drug is taken for: "warfarin for atrial fibrillation and something for blood pressure". */
export function namesReason(tokens: readonly Token[], { from }: Pick<Piece, 'from'>): boolean {
  const before = tokens[from - 1]?.word ?? '';
  return /^(for|against)$/.test(
    /^(his|her|my|their|the|a|an|high|low)$/.test(before) ? (tokens[from - 2]?.word ?? '') : before,
  );
}

// "And a blood pressure tablet".
const isOfDrug = (tokens: readonly Token[], { to }: Piece): boolean => isMedicine(tokens[to]?.word);

// "Takes gout tablets": the word closes the name of what is taken, and opens nothing.
const isMedicine = (word: string | undefined): boolean =>
  /^(tablets?|pills?|meds?|medications?|medicines?)$/.test(word ?? '');

// After a comma, a finding or a site that is not part of a plain list begins a statement of its own.
function startsStatement(pieces: readonly Piece[], k: number): boolean {
  const [first, second] = pieces.slice(k, k + 4).filter((piece) => piece.role !== 'small');
  if (first === undefined || second === undefined) return false;
  const denies = first.role === 'negation' || marked(first, 'negation', 'before');
  if (denies || first.role === 'finding') return second.role !== 'unknown';
  const isPlace = first.role === 'side' || first.role === 'site';
  return isPlace && (second.role === 'finding' || second.role === 'site');
}

const CLOSED: ReadonlySet<Role> = new Set(['site', 'vital', 'intention', 'talk']);

// Words that name no drug after "taking": what is taken is then a thing, a part in something, or over.
const NO_TEXT =
  /^(this|that|the|it|these|those|off|pain|temperature|pulse|pressure|you|your|his|her|him|them|me|us|care|over|place|part|turns)$/;

/** True where the piece after a guarded opening can be its text. */
export const opensText = (tokens: readonly Token[], next: Piece | undefined): boolean =>
  next !== undefined &&
  !CLOSED.has(next.role) &&
  !/^(litres?|liters?)$/.test(tokens[next.to]?.word ?? '') &&
  !NO_TEXT.test(tokens[next.from]?.word ?? '') &&
  !isOnAThing(tokens, next.from) &&
  !isRopeCall(tokens, next.from) &&
  !isTakenOff(tokens, next.from) &&
  pauseBefore(tokens, next) === '';

// "Take in two metres", "take up the slack", "give or take nine", "on belay": called over a rope, and said of how many there are.
const isRopeCall = (tokens: readonly Token[], at: number): boolean => {
  const [two, one, next] = [tokens[at - 2]?.word, tokens[at - 1]?.word, tokens[at]?.word ?? ''];
  if (one === 'on') return /^(belay|rope|scene|station|loan|divert|order|standby|watch)$/.test(next);
  return (one === 'take' && /^(in|up|photos?|pictures?)$/.test(next)) || (two === 'or' && one === 'take');
};

// "Took his ring off".
const isTakenOff = (tokens: readonly Token[], at: number): boolean =>
  tokens.slice(at + 1, at + 4).some(({ word }) => word === 'off');

// "He's on a mountain" takes nothing; "on a new tablet" does.
const isOnAThing = (tokens: readonly Token[], at: number): boolean =>
  tokens[at - 1]?.word === 'on' &&
  /^(a|an)$/.test(tokens[at]?.word ?? '') &&
  !tokens.slice(at + 1, at + 7).some(({ word }) => REMEDY.test(word));

const REMEDY =
  /^(tablets?|pills?|medicines?|medications?|meds?|drugs?|inhalers?|courses?|patch|doses?|drops|injections?|blockers?|thinners?|statins?|steroids?|antibiotics?|diuretic|sedative|painkillers?|antidepressants?|insulin|puffer|spray)$/;

const LEAD = /^(is|are|was|to|of|that|includes?|um|well|yeah|yes|it|just|only)$/;

/** The first token of a text, past the small words that lead to it. */
export function startOfText(tokens: readonly Token[], from: number, to: number): number {
  let at = from;
  while (at < to && LEAD.test(tokens[at]?.word ?? '')) at++;
  return at;
}

const BEFORE_NAME = /^(i|my|name|is|am|it|this|they|call|me|people|everyone|called|just)$/;

/** "I'm Dana", "they call me Dana": the first token of the name; where nothing else is said, the words themselves. */
export function startOfName(tokens: readonly Token[], from: number, to: number): number {
  let at = from;
  while (at < to && BEFORE_NAME.test(tokens[at]?.word ?? '')) at++;
  return at < to ? at : from;
}

const MOST_NAMES = 3;
const AFTER_NAME = /^(i|and|he|she|is|from|who|but)$/;

/** Past a name: it runs to the first pause, and over three words at most. */
export function endOfName(tokens: readonly Token[], from: number, end: number): number {
  const most = Math.min(end, from + MOST_NAMES);
  for (let at = from; at < most; at++)
    if (isPaused(tokens, { to: at + 1 }) || AFTER_NAME.test(tokens[at + 1]?.word ?? '')) return at + 1;
  return most;
}
