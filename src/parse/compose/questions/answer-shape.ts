// The words of an answer with its places, sides and parts as signs (S0, D0, P0, and F for what was asked after), so that a form of
// answer can be told from its words whatever it names.

import type { Part, Side } from '../../../terms/index.ts';
import { type Piece, type Role, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { itemsOf } from '../exam/items.ts';
import { type SitePhrase, wordsOf } from '../sites/item.ts';
import { partsOf, sideAfter } from '../sites/said-side.ts';
import type { Talk } from '../talk.ts';
import { isHurt } from './echo.ts';
import type { AskedFindings } from './settle.ts';

export interface Shape {
  readonly words: string;
  /** a pause is marked within it, past its first place */
  readonly isParted: boolean;
  readonly phrases: readonly SitePhrase[];
  readonly sides: readonly Side[];
  readonly parts: readonly (readonly Part[])[];
}

const WORDS: ReadonlySet<Role> = new Set([
  'small',
  'talk',
  'negation',
  'answer',
  'asking',
  'correction',
  'attribute',
]);

// The side's own words hold "on the left".
const LED = /^(on|in|to|at) /;

// "Um", "well" and articles tell nothing of the form.
const EMPTY = /\b(the|my|his|her|a|um|uh|er|well|oh|actually|mostly|mainly) /g;

/** The answer's words so; null where it says something besides. */
export function shapeOf(talk: Talk, pieces: readonly Piece[], asked: AskedFindings): Shape | null {
  const phrases: SitePhrase[] = [];
  const sides: Side[] = [];
  const parts: (readonly Part[])[] = [];
  const out: string[] = [];
  const items = itemsOf(talk, pieces);
  for (const item of items) {
    if (item.type === 'site') {
      out.push(`S${String(phrases.push(item.phrase) - 1)}`);
      continue;
    }
    const { piece } = item;
    const said = saidIn(talk.tokens, piece.from, piece.to);
    const side = piece.role === 'side' ? sideAfter(piece) : null;
    // A bare "right" may be mere talk.
    if (piece.role === 'side' && piece.weak) return null;
    if (side !== null && side !== 'mirror')
      out.push(`${LED.exec(said)?.[0] ?? ''}D${String(sides.push(side) - 1)}`);
    // "Lower, the wrist" leads there.
    else if (piece.role === 'part' && !/^(lower|higher|upper)$/.test(said))
      out.push(`P${String(parts.push(partsOf(piece)) - 1)}`);
    else if (piece.role === 'finding' && isAsked(piece, asked)) out.push('F');
    else if (piece.role === 'part' || WORDS.has(piece.role)) out.push(said);
    else return null;
  }
  const spans = items.map((item) => wordsOf(item));
  const first = items.findIndex((item) => item.type === 'site' || item.piece.role === 'side');
  const isParted = spans.slice(Math.max(first, 0), -1).some((span) => isPaused(talk.tokens, span));
  return { isParted, words: `${out.join(' ')} `.replace(EMPTY, '').trim(), phrases, sides, parts };
}

function isAsked(piece: Piece, { findings }: AskedFindings): boolean {
  const said = tagIn(piece, 'findings.finding', 'finding');
  return findings.every(({ finding }) => finding === said || (isHurt(finding) && isHurt(said)));
}
