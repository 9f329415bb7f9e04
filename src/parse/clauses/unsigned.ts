// Questions and answers that only the words behind them give away: "sore anywhere on the scalp no", "trouble breathing nope", "any
// pain there just a graze".

import { likelyTag, marked, type Piece, readingOf } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { become, begin, isAnswer, type Place, type Turn } from './place.ts';
import { isOpenEnd } from './run-on.ts';

/** "Sore anywhere on the scalp no", "pressing on the jaw, sore anywhere": what may be anywhere is asked after, unless something denies it. */
export function anywhere({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'statement' || tokens[piece.from]?.word !== 'anywhere') return null;
  const said = pieces[i - 1];
  const isThere = said?.role === 'finding' && likelyTag(said, 'present') !== 'false';
  if (!isThere || draft.pieces.some(denies)) return null;
  const [next] = pieces.slice(i + 1);
  if (next === undefined || next.role === 'talk' || isPaused(tokens, piece)) return become('question');
  return pieces.slice(i + 1).some((one) => isAnswer(one) && !marked(one, 'pointed'))
    ? become('question')
    : null;
}

const denies = (piece: Piece): boolean =>
  marked(piece, 'negation', 'before') || marked(piece, 'answer', 'no') || marked(piece, 'nothing');

/** "Trouble breathing nope": a symptom was asked after where a bare "no" follows it, and nothing that the "no" could deny. */
export function deniedAfter({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'statement' || piece.role !== 'history') return null;
  if (!marked(piece, 'topic', 'symptoms') || marked(piece, 'denied')) return null;
  if (draft.pieces.some((one) => one.role !== 'small' && one.role !== 'talk')) return null;
  const [no, next] = pieces.slice(i + 1);
  if (no === undefined || !isPlainNo(no, tokens)) return null;
  const isAll = next === undefined || isPaused(tokens, no) || isJust(next, tokens);
  return isAll ? become('question') : null;
}

const isPlainNo = (piece: Piece, tokens: readonly Token[]): boolean =>
  marked(piece, 'plain') && /^(no|nope|nah)$/.test(tokens[piece.from]?.word ?? '');

const isJust = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  to - from === 1 && /^(just|only)$/.test(tokens[from]?.word ?? '');

/** "Anything on the chest just a red mark": what there only is answers, and is no part of what was asked. */
export function onlyThat({ piece, pieces, i, tokens, full, draft }: Place): Turn | null {
  if (draft.mood !== 'question' || !full || !isJust(piece, tokens) || !isOpenEnd(tokens, piece.from))
    return null;
  const article = pieces[i + 1];
  if (article === undefined || !/^(a|an|some)$/.test(tokens[article.from]?.word ?? '')) return null;
  return pieces.slice(i + 2, i + 5).some(({ role }) => role === 'finding') ? begin('statement') : null;
}

/** "Can you squeeze my hands good strong grip": how it was is said behind the whole question. */
export function checkedNext({ piece, tokens, draft }: Place): Turn | null {
  const [asked, ...others] = draft.pieces.filter(({ role }) => role !== 'small' && role !== 'talk');
  if (draft.mood !== 'question' || asked === undefined || readingOf(asked, 'csm.ask') === null) return null;
  if (!others.every(({ role }) => role === 'site' || role === 'side')) return null;
  if (piece.role !== 'csm' || piece.weak || !isOpenEnd(tokens, piece.from)) return null;
  return likelyTag(piece, 'present') !== null ? begin('statement') : null;
}
