// Questions that only their end or the talk before them gives away: "no pain in your back, right", "and your shoulders".

import { isJoin } from '../compose/sayings/index.ts';
import { isSmall, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { pauseAfter } from '../span.ts';
import { saidIn, type Token } from '../token.ts';

const NAMING: ReadonlySet<Role> = new Set(['site', 'small', 'side', 'part', 'talk', 'intention', 'mood']);

/** True where these pieces ask, though nothing in them opens a question; `asking`: the talk before them did. */
export const asksAtTheEnd = (pieces: readonly Piece[], tokens: readonly Token[], asking: boolean): boolean =>
  hasTagQuestion(pieces, tokens) || asksUnsigned(pieces, tokens) || asksOn(pieces, tokens, asking);

const ELSEWHERE =
  /^(and )?((any )?(pain|hurting|hurt|sore|tender) (anywhere|somewhere) else|anywhere else (hurting|hurt|sore|painful|tender|in pain))( at all| now)?$/;

// "Hurt when I press on your ribs": without its "does it" the question is told by its bare verb and by whose ribs they are.
function asksUnsigned([first, ...rest]: readonly Piece[], tokens: readonly Token[]): boolean {
  // "Hurting anywhere else", "anywhere else sore".
  const said = first === undefined ? '' : saidIn(tokens, first.from, rest.at(-1)?.to ?? first.to);
  if (ELSEWHERE.test(said)) return rest.every(({ role }) => NAMING.has(role) || role === 'finding');
  // "Anything wrong with your knee": nobody states so.
  if (first !== undefined && first.role === 'finding' && tokens[first.from]?.word === 'anything')
    return rest.every(({ role }) => NAMING.has(role));
  // "Is my leg broken" is asked by the patient.
  if (
    first !== undefined &&
    /^(is|are|have|did|has) my$/.test(saidIn(tokens, first.from, first.from + 2)) &&
    rest.some(({ role }) => role === 'finding')
  )
    return true;
  // "You hurting in the chest?" without its sign.
  if (
    first !== undefined &&
    /^you (hurting|hurt|sore|tender)$/.test(saidIn(tokens, first.from, first.from + 2))
  )
    return rest.every(({ role }) => NAMING.has(role) || role === 'finding');
  if (first?.role !== 'finding' || tokens[first.from]?.word !== 'hurt') return false;
  const words = tokens.slice(first.from, (rest.at(-1) ?? first).to).map(({ word }) => word);
  return words.includes('i') && words.includes('your') && rest.every(({ role }) => NAMING.has(role));
}

/** True where only its last breath asks, and of the partner: "left knee swollen, got that?", "sats ninety four, okay?". */
export function asksIfHeard(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const last = pieces.findLastIndex((piece, k) => k < pieces.length - 1 && pauseAfter(tokens, piece) !== '');
  const breath = pieces.slice(last + 1);
  const words = tokens.slice(breath[0]?.from, breath.at(-1)?.to).map(({ word }) => word);
  return last >= 0 && HEARD.test(words.join(' '));
}

/** "Ankle's tender, that hurt, mate?": the breath from piece `i` on asks, and what stands before it is told. */
export function asksAside(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const from = pieces[i]?.from ?? 0;
  const end = tokens.findIndex(({ pause }, at) => at >= from && (pause === 'ask' || pause === 'end'));
  if (end < 0 || tokens[end]?.pause !== 'ask') return false;
  return ASIDE.test(saidIn(tokens, from, end + 1));
}

const ASIDE =
  /^(and )?((does |is )?(that|this|it) (hurt|hurting|sore|painful|tender)|(hurt|sore|painful|tender))( there| here| much| a bit| when i press| at all)*( mate| love| buddy| pal| sweetheart| dear| sir| darling)?$/;

const HEARD =
  /^(okay|ok|copy( that)?|(you |have you |did you )?(got|get|copy|hear) (it|that|this|me)|all good|clear)$/;

/** The pieces of a question with the "right" at its end as mere talk. */
export function withoutTag(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const last = pieces.at(-1);
  if (last === undefined || !hasTagQuestion(pieces, tokens)) return pieces;
  return [...pieces.slice(0, -1), { ...last, role: 'talk' }];
}

/** "The left wrist is swollen, that's the one that's swollen, right": behind what was said of the left in the same words it is no side. */
export function withoutClosingRight(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const [last, said] = [pieces.at(-1), pieces.at(-2)];
  if (last?.role !== 'side' || !last.weak || said?.role !== 'finding') return pieces;
  if (last.to - last.from > 1 || tokens[last.from]?.word !== 'right') return pieces;
  const words = saidIn(tokens, said.from, said.to);
  const again = pieces
    .slice(0, -2)
    .findIndex((piece) => piece.role === 'finding' && saidIn(tokens, piece.from, piece.to) === words);
  const left = pieces
    .slice(0, Math.max(again, 0))
    .some((piece) => piece.role === 'side' && tokens[piece.to - 1]?.word === 'left');
  return left ? [...pieces.slice(0, -1), { ...last, role: 'talk' }] : pieces;
}

// "No pain in your back, right": a "right" at the end of what is said to the patient asks for a yes or a no.
function hasTagQuestion(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const [last, before] = [pieces.at(-1), pieces.at(-2)];
  if (last === undefined || before === undefined || pieces.length < 4) return false;
  const isRight =
    last.weak &&
    last.to - last.from === 1 &&
    readingOf(last, 'talk.courtesy') !== null &&
    last.role === 'side';
  return (
    isRight &&
    before.role === 'site' &&
    tokens.slice(pieces[0]?.from, last.from).some(({ word }) => word === 'your') &&
    pieces.some(({ role }) => role === 'finding')
  );
}

// "And your shoulders" after a question asks the same of another site.
function asksOn(pieces: readonly Piece[], tokens: readonly Token[], asking: boolean): boolean {
  const site = pieces.find(({ role }) => role === 'site');
  if (site === undefined && asking && isOtherSide(pieces)) return true;
  if (site === undefined || !pieces.every(({ role }) => NAMING.has(role))) return false;
  // "My knee" is the patient's answer.
  if (pieces.some((piece) => isSmall(piece, 'mine'))) return false;
  const lead = tokens.slice(pieces[0]?.from, site.to).map(({ word }) => word);
  // After an answer, a bare place ("neck?" written without its sign) goes on asking; a statement of it still counts as one.
  return asking || (lead.includes('and') && lead.includes('your'));
}

// "And the right one", "and on the left", a breath after the answer: the same is asked of that side.
const isOtherSide = ([first, ...rest]: readonly Piece[]): boolean =>
  first !== undefined &&
  isJoin(first) &&
  rest.some(({ role }) => role === 'side') &&
  rest.every(({ role }) => role === 'side' || role === 'small' || role === 'talk');
