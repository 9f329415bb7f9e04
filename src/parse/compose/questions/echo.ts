// Whether an answer's own words repeat the question or say something new: "does it hurt when I press?" "Yeah, that hurts".

import { marked, type Piece, type Role, tagIn } from '../../pieces/piece.ts';
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

const PLACES: ReadonlySet<Role> = new Set(['site', 'side', 'part']);

/** What an answer's own words say of what was asked after, at the same place: there or not; null where they say nothing of it. */
export function saidOfAsked(asked: AskedFindings, rest: readonly Piece[]): 'there' | 'denied' | null {
  const at = rest.findIndex(({ role, weak }) => role === 'finding' && !weak);
  const found = rest[at];
  if (found === undefined || rest.some((piece) => PLACES.has(piece.role) || marked(piece, 'pointed')))
    return null;
  const said = tagIn(found, 'findings.finding', 'finding');
  const isAsked = asked.findings.some(
    ({ finding, present }) => present && (finding === said || (isHurt(finding) && isHurt(said))),
  );
  const isDenied =
    tagIn(found, 'findings.finding', 'present') === 'false' ||
    rest.slice(0, at).some((piece) => marked(piece, 'negation', 'before') || marked(piece, 'answer', 'no'));
  if (!isAsked) return null;
  return isDenied ? 'denied' : 'there';
}
