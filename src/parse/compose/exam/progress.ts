// "Swelling's going down", "the rash is spreading": how a finding that was told goes on is no new finding of the place in mind.

import type { Span } from '../../span.ts';
import { toldIn } from '../../told.ts';
import type { FoundFinding } from '../findings/found-finding.ts';
import { note, place, type Talk } from '../talk.ts';

const GOES_ON =
  /^((is|are|has|have|was|now|nearly|almost|all|mostly|slowly|just|still|already|a|bit|lot|much|definitely) )*(going (down|away|up)|gone (down|up)|coming down|come down|fading|faded|getting (a |bit |lot |much )*(better|worse|bigger|smaller|less|more)|settling|settled|easing|eased|improving|improved|better|worse|spreading|increasing|decreasing|subsiding|subsided|reducing|shrinking)\b/;

/** The words that say how a finding without a place of its own goes on, with the finding's own; null where none do. */
export function progressOf({ tokens }: Talk, { piece, siteSpoken }: FoundFinding): Span | null {
  if (siteSpoken || tokens[piece.to - 1]?.pause !== '') return null;
  const rest = tokens.slice(piece.to);
  const end = rest.findIndex(({ pause }) => pause !== '');
  const words = end < 0 ? rest : rest.slice(0, end + 1);
  if (!GOES_ON.test(`${words.map(({ word }) => word).join(' ')}`)) return null;
  return { from: piece.from, to: piece.to + words.length };
}

/** Keeps the words of findings that go on, and gives those that are still to be stated: what was told already is not. */
export function withoutProgress(talk: Talk, found: readonly FoundFinding[]): readonly FoundFinding[] {
  const told = toldIn(talk.context.found);
  return found.filter((one) => {
    const words = one.present ? progressOf(talk, one) : null;
    if (words === null) return true;
    note(talk, words);
    place(talk, words);
    return !one.findings.every((name) => told.some(({ finding }) => finding === name));
  });
}
