// "Swelling no, bruising yes, deformity no": where each thing that is named has its own yes or no behind it, to the end of the breath,
// no answer reaches over the next thing.

import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { marked, type Piece, type Role, tagIn } from './piece.ts';
import { reread } from './reread.ts';

const YES = /^(yes|yeah|yep|yup|present|positive)$/;
const NO = /^(no|nope|nah|none|nil|absent|negative|denied)$/;

/** The pieces with each such answer marked `checked`: what stands before it is whole. */
export function withChecklists(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const said = withPartedDenials(pieces, tokens) ?? pieces;
  const answers = answersIn(said, tokens);
  return answers.size === 0
    ? said
    : said.map((piece, i) => (answers.has(i) ? checked(piece, tokens) : piece));
}

/** "Fever no chills no" holds the phrase "no chills": the pieces with its "no" parted from it, or null where that makes no list. */
function withPartedDenials(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] | null {
  if (!pieces.some((piece, i) => i > 0 && isDenial(piece, tokens))) return null;
  const parted: Piece[] = [];
  const nos: number[] = [];
  for (const [i, piece] of pieces.entries()) {
    if (i === 0 || !isDenial(piece, tokens)) parted.push(piece);
    else {
      nos.push(parted.length);
      parted.push(...halves(piece));
    }
  }
  const answers = answersIn(parted, tokens);
  return nos.every((at) => answers.has(at)) ? parted : null;
}

const isDenial = (piece: Piece, tokens: readonly Token[]): boolean =>
  piece.role === 'history' &&
  piece.to - piece.from > 1 &&
  tokens[piece.from]?.word === 'no' &&
  marked(piece, 'denied');

function halves(piece: Piece): readonly Piece[] {
  const no = { ...reread(piece, 'answer', 'talk.answer', { answer: 'no', plain: '' }), to: piece.from + 1 };
  const topic = tagIn(piece, 'history', 'topic') ?? '';
  const thing = reread(piece, 'history', piece.islands[0]?.rule ?? '', { topic, whole: '', noun: '' });
  return [no, { ...thing, from: piece.from + 1 }];
}

const FEWEST = 2;

// "Bruising: no", "bruising - nope": a colon or a dash leads to the answer of one thing alone, too.
const isLedTo = (pieces: readonly Piece[], tokens: readonly Token[], answer: number): boolean =>
  tokens[(pieces[answer]?.from ?? 0) - 1]?.pause === 'dash';

/** The indexes of the answers of every list that is long enough. */
function answersIn(pieces: readonly Piece[], tokens: readonly Token[]): ReadonlySet<number> {
  const all = new Set<number>();
  let list: number[] = [];
  let start = 0;
  for (const [i, piece] of pieces.entries()) {
    if (!isAnswer(piece, tokens)) continue;
    const item = pieces.slice(start, i);
    const isFirst = list.length === 0;
    // What stands before the first thing may be other talk: the list begins at its own breath.
    const own = isFirst ? lastBreath(item, tokens) : item;
    if (isItem(own, tokens)) list.push(i);
    else {
      keep(all, list, pieces, tokens);
      list = isItem(lastBreath(item, tokens), tokens) ? [i] : [];
    }
    start = i + 1;
  }
  keep(all, list, pieces, tokens);
  return all;
}

// "No swelling no bruising" has no answer behind its last thing: then each "no" is of what follows it.
function keep(
  all: Set<number>,
  list: readonly number[],
  pieces: readonly Piece[],
  tokens: readonly Token[],
): void {
  const last = list.at(-1);
  if (last === undefined || (list.length < FEWEST && !isLedTo(pieces, tokens, last))) return;
  const [answer, next] = [pieces[last], pieces[last + 1]];
  if (answer === undefined || (next !== undefined && !isPaused(tokens, answer) && !ENDING.has(next.role)))
    return;
  for (const at of list) all.add(at);
}

const ENDING: ReadonlySet<Role> = new Set(['talk', 'command']);

const wordOf = ({ from, to }: Piece, tokens: readonly Token[]): string =>
  to - from === 1 ? (tokens[from]?.word ?? '') : '';

function isAnswer(piece: Piece, tokens: readonly Token[]): boolean {
  const word = wordOf(piece, tokens);
  return YES.test(word) || NO.test(word);
}

const STATED: ReadonlySet<Role> = new Set(['finding', 'history', 'csm', 'vital']);
const BESIDE: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'attribute']);

// One thing, with its place perhaps, and its answer straight behind it.
function isItem(item: readonly Piece[], tokens: readonly Token[]): boolean {
  const [first, last] = [item[0], item.at(-1)];
  if (first === undefined || last === undefined || first.role === 'attribute') return false;
  const stated = item.filter(({ role }) => STATED.has(role));
  const isOne = stated.length === 1 && stated.every((piece) => isBare(piece));
  const isPlain = item.every((piece) => STATED.has(piece.role) || (BESIDE.has(piece.role) && !denies(piece)));
  const pause = tokens[last.to - 1]?.pause ?? '';
  return isOne && isPlain && (pause === '' || pause === 'dash');
}

const denies = (piece: Piece): boolean => marked(piece, 'negation') || marked(piece, 'answer');

// A thing by its name, and no reading, no denial and no word that says of itself how it is.
const isBare = (piece: Piece): boolean =>
  (piece.islands[0]?.slots.length ?? 0) === 0 &&
  !marked(piece, 'present') &&
  !marked(piece, 'denied') &&
  !piece.weak;

// What stands before the first thing may be other talk: "okay checklist time for the right shoulder deformity no".
function lastBreath(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const end = pieces.findLastIndex(
    (piece, k) =>
      k < pieces.length - 1 && (breaks(tokens, piece) || !(STATED.has(piece.role) || BESIDE.has(piece.role))),
  );
  return pieces.slice(end + 1);
}

const breaks = (tokens: readonly Token[], { to }: Piece): boolean =>
  tokens[to - 1]?.pause === 'end' || tokens[to - 1]?.pause === 'ask';

function checked(piece: Piece, tokens: readonly Token[]): Piece {
  if (!YES.test(wordOf(piece, tokens))) return deniedBehind(piece);
  const state = reread(piece, 'small', 'states.state', { state: 'there' }).islands;
  const said = reread(piece, 'small', 'small.small', { small: 'word', checked: '' });
  return { ...said, islands: [...said.islands, ...state], weak: false };
}

/** The "no" of one thing, behind it: what stands before it is whole. */
export function deniedBehind(piece: Piece): Piece {
  const state = reread(piece, 'small', 'states.state', { state: 'absent' }).islands;
  const said = reread(piece, 'negation', 'negation.negation', { negation: 'after', checked: '' });
  return { ...said, islands: [...said.islands, ...state], weak: false };
}
