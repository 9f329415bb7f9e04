// Whether words beside a sign say that it was so before ("pulse one ten before the splint"): then it is no reading of now.

import { marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Talk } from '../talk.ts';

const BEFORE = /^(before|beforehand|earlier|initially|previously|originally|prior)$/;

const FIRST =
  /^(when (we|i|they) (found|got|came|arrived|reached|saw)|(on|at) (the )?(scene|arrival|first|start)|to (start|begin) with)\b/;

/**
 * "Pulse one ten before the splint", "before the drug one sixty over ninety", "GCS ten when we got there", and not "pulse
 * ninety, before that …".
 */
export function isBefore({ tokens }: Pick<Talk, 'tokens'>, pieces: readonly Piece[], i: number): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined) return false;
  if (!isPaused(tokens, piece)) {
    if (BEFORE.test(tokens[piece.to]?.word ?? '')) return true;
    if (next !== undefined && marked(next, 'earlier')) return true;
  }
  // "Was eighty on scene", "were twenty eight on arrival".
  const said = tokens.slice(piece.from, piece.to).map(({ word }) => word);
  const after = tokens.slice(piece.to, piece.to + 3).map(({ word }) => word);
  const isNamed = (piece.islands[0]?.slots.length ?? 0) === 0;
  const near = [...said, ...(isNamed ? after.slice(0, 2) : [])].join(' ');
  if (/\b(usually|typically|(is|are|of) normally)\b/.test(near)) return true;
  if (said.some((word) => /^(was|were)$/.test(word)) && FIRST.test(after.join(' '))) return true;
  const lead: string[] = [];
  // "Was eight before the ketamine now it's three": the "now" ends what was before.
  for (let at = piece.from - 1; at >= 0 && tokens[at]?.pause === '' && !isNow(tokens[at]?.word); at--)
    lead.push(tokens[at]?.word ?? '');
  // "His usual pressure is one fifty over ninety" is that of other days; "normally fit, pulse eighty" is of now.
  return lead.some((word) => BEFORE.test(word)) || USUAL.test(lead.join(' '));
}

const isNow = (word: string | undefined): boolean => /^(now|currently)$/.test(word ?? '');

// The words before the sign, the nearest first.
const USUAL =
  /^((his|her|the|my|their|a|an|has|have|is|are|it|they|like|about|around|at|was|sits|he|she|i|runs|run|oxygen|resting|blood) )*(usual|usually|normally|typically)\b/;
