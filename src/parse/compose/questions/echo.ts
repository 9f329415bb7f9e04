// Whether an answer's own words repeat the question or say something new: "does it hurt when I press?" "Yeah, that hurts".

import { type Piece, tagIn } from '../../pieces/piece.ts';
import type { AskedFindings } from './settle.ts';

/** True for pain and tenderness, which answers name for one another. */
export const isHurt = (finding: string | null): boolean => finding === 'pain' || finding === 'tenderness';

/** The findings of an answer that only repeat what was asked, whose word is the better one; none where they say more. */
export function echoedFindings(asked: AskedFindings, rest: readonly Piece[]): readonly Piece[] {
  const said = rest.filter(({ role }) => role === 'finding');
  const repeats =
    said.every((piece) => isHurt(tagIn(piece, 'findings.finding', 'finding'))) &&
    asked.findings.every(({ finding }) => isHurt(finding)) &&
    !rest.some(({ role }) => role === 'site');
  return repeats ? said : [];
}

/** True where an answer names findings of its own. */
export const hasOwnFindings = (asked: AskedFindings, rest: readonly Piece[]): boolean =>
  rest.some(({ role, weak }) => role === 'finding' && !weak) && echoedFindings(asked, rest).length === 0;
