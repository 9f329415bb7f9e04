// "Swelling's going down", "the rash is spreading": how a finding that was told goes on is no new finding of the place in mind.

import type { SiteRef } from '../../context.ts';
import type { Span } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { toldIn } from '../../told.ts';
import type { FoundFinding } from '../findings/found-finding.ts';
import { plainSite } from '../sites/site-ref.ts';
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

const GONE =
  /^((is|are|has|have) )?((now|all|completely|pretty much) )?(gone|stopped|resolved|cleared|settled|worn off|disappeared|eased)\b/;

/** "The numbness has gone", with a place in mind that never had it: it is gone from where it was told last. */
function whereItWas(talk: Talk, one: FoundFinding): FoundFinding {
  const [name] = one.findings;
  if (one.present || one.siteSpoken || one.sideSpoken || name === undefined) return one;
  const words = talk.tokens.slice(one.piece.to, one.piece.to + 5).map(({ word }) => word);
  if (!GONE.test(words.join(' '))) return one;
  const told = toldIn(talk.context.found).filter(({ finding, present }) => present && finding === name);
  const last = told.at(-1);
  if (last === undefined || told.some(({ site }) => one.refs.some((ref) => ref.site === site))) return one;
  return { ...one, refs: [plainSite(last.site, last.side)], atHome: false };
}

const WOUNDS: ReadonlySet<string> = new Set([
  'laceration',
  'puncture',
  'avulsion',
  'amputation',
  'bite',
  'abrasion',
]);

/** "Wrist's good, pulses good. Bleeding a fair bit": what was called normal does not bleed, and the wound told last does. */
function whereTheWoundIs({ context }: Talk, one: FoundFinding): FoundFinding {
  if (!one.present || one.siteSpoken || one.sideSpoken || !one.findings.includes('bleeding')) return one;
  const told = toldIn(context.found);
  const isNormal = one.refs.every(({ site }) => {
    const last = told.findLast((other) => other.site === site);
    return last?.finding === 'abnormality' && !last.present;
  });
  const wound = told.findLast(({ finding, present }) => present && WOUNDS.has(finding));
  if (!isNormal || wound === undefined) return one;
  return { ...one, refs: [plainSite(wound.site, wound.side)], doubt: [...one.doubt, 'Does it bleed there?'] };
}

// "No exit wound" with no place of its own, or with the wound's, is said of wherever it might have come out, and takes back no wound that was told.
const isNoExit = (
  { tokens }: Talk,
  { piece, present, siteSpoken, refs }: FoundFinding,
  found: readonly FoundFinding[],
): boolean =>
  !present &&
  tokens.slice(piece.from, piece.to).some(({ word }) => word === 'exit') &&
  (!siteSpoken ||
    found.some((one) => one.present && refs.every((ref) => one.refs.some((at) => isSame(at, ref)))));

const isSame = (one: SiteRef, other: SiteRef): boolean => one.site === other.site && one.side === other.side;

const STOPPED =
  /^((has|have|is|are) )?((now|all|just|completely|mostly|pretty much) )*(stopped|ceased|settled|quit|gone|resolved)( (now|completely|altogether|by itself|on its own))*$/;
const OVER =
  /^((has|have|is|are|was) )?((now|all|just|completely|mostly|nearly|almost|pretty much|since) )*(stopped|ceased|quit|gone( (down|away))?|went (down|away)|come down|faded|settled|eased|subsided|resolved|cleared|disappeared|worn off)\b/;

/**
 * "Bleeding on the left forearm has stopped" bled and is controlled, as it is where its place stands before it; "the swelling in her lip has gone
 * down" is asked about. The words behind the place go with it.
 */
function overAtItsPlace(talk: Talk, one: FoundFinding): FoundFinding {
  const { tokens } = talk;
  const end = Math.max(one.to, one.piece.to);
  // What is told of the finding straight behind it was read with it.
  if (!one.present || !one.siteSpoken || end === one.piece.to || tokens[end - 1]?.pause !== '') return one;
  const rest = tokens.slice(end);
  const last = rest.findIndex(({ pause }) => pause !== '');
  const to = end + (last < 0 ? rest.length : last + 1);
  const words = saidIn(tokens, end, to);
  if (one.findings.length === 1 && one.findings[0] === 'bleeding' && STOPPED.test(words)) {
    place(talk, { from: end, to });
    const quality = [...new Set([...(one.attributes.quality ?? []), 'controlled'])];
    return {
      ...one,
      to,
      attributes: { ...one.attributes, quality },
      spans: [...one.spans, { from: end, to }],
    };
  }
  if (!OVER.test(words)) return one;
  return { ...one, doubt: [...one.doubt, IS_IT_THERE] };
}

const IS_IT_THERE = 'Is it there now?';

/** Keeps the words of findings that go on, and gives those that are still to be stated: what was told already is not. */
export function withoutProgress(talk: Talk, found: readonly FoundFinding[]): readonly FoundFinding[] {
  if (found.length === 0) return found;
  const told = toldIn(talk.context.found);
  return found
    .map((one) => overAtItsPlace(talk, whereTheWoundIs(talk, whereItWas(talk, one))))
    .filter((one) => {
      if (isNoExit(talk, one, found)) return false;
      const words = one.present ? progressOf(talk, one) : null;
      if (words === null) return true;
      note(talk, words);
      place(talk, words);
      return !one.findings.every((name) => told.some(({ finding, present }) => present && finding === name));
    });
}
