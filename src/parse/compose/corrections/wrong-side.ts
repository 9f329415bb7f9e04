// "That's the right hand, not the left": what was said of a place turns out to be of its other side, and so does all that was
// said within it since it was named.

import { isWithin, type Side, type Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { marked, type Piece, type Role } from '../../pieces/piece.ts';
import { saidIn } from '../../token.ts';
import { type Told, toldIn } from '../../told.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import { otherSide } from '../sites/side.ts';
import { sideIn } from '../sites/side-in.ts';
import { plainSite } from '../sites/site-ref.ts';
import type { Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { findingIn } from './said-anew.ts';

const PLACES: ReadonlySet<Role> = new Set([
  'site',
  'side',
  'small',
  'talk',
  'negation',
  'asking',
  'correction',
]);

/** True where a clause tells that what was just said is of the other side; it opens with "that is", "it was" or the like. */
export const tellsWrongSide = (talk: Talk, pieces: readonly Piece[]): boolean =>
  opensWithIt(talk, pieces) && wrongSide(talk, pieces) !== null;

/** The changes of a correction that names the other side of what was said last; null where it does not. */
export function wrongSide(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const ref = placeIn(talk, pieces);
  const was = ref === null ? null : otherSide(ref.side);
  if (ref === null || ref.side === null || (was !== 'left' && was !== 'right')) return null;
  const finding = findingIn(pieces);
  const run = opensWithIt(talk, pieces) ? runOf(talk, ref.site, was) : innerOf(talk, ref.site, was);
  const meant = run.filter((one) => finding === null || one.finding === finding);
  const { side } = ref;
  return meant.length === 0
    ? null
    : meant.map(({ site, finding: name }) => ({
        change: { change: 'side', side },
        target: { kind: 'finding', site, finding: name, side: was },
      }));
}

// One place with its side, and nothing said of it but what is told again: "it's the right thigh that's swollen".
function placeIn(talk: Talk, pieces: readonly Piece[]): SiteRef | null {
  const findings = pieces.filter(({ role }) => role === 'finding');
  const said = pieces.filter(({ role }) => !PLACES.has(role) && role !== 'finding');
  if (said.length > 0 || findings.length > 1 || !findings.every((one) => isToldAgain(talk, pieces, one)))
    return null;
  const denials = pieces.filter((one) => marked(one, 'negation', 'before') && !marked(one, 'plain'));
  if (!denials.every((one) => takesBackSide(pieces, one))) return null;
  const [ref, ...others] = phrasesIn(itemsOf(talk, pieces)).flatMap(({ sites }) => sites);
  if (ref === undefined) return findings.length === 1 ? sideOfLast(talk, pieces) : null;
  return ref.sideKnown === 'spoken' && others.length === 0 ? ref : null;
}

// "It's the left that's got the gash."
function sideOfLast({ context: { run } }: Talk, pieces: readonly Piece[]): SiteRef | null {
  const [side, last] = [sideIn(pieces)?.side ?? null, run.at(-1)?.at(-1)];
  return side === null || last === undefined ? null : plainSite(last.site, side);
}

// "… that's swollen", "… which is tender", "… with the gash".
const isToldAgain = ({ tokens }: Talk, [first]: readonly Piece[], finding: Piece): boolean =>
  AGAIN.test(saidIn(tokens, first?.from, finding.from));

const AGAIN = /\b((that|which) (is|are|was|has|have|is got|has got|got)( the| a)?|with the)$/;

const takesBackSide = (pieces: readonly Piece[], denial: Piece): boolean =>
  pieces[pieces.indexOf(denial) + 1]?.role === 'side';

function opensWithIt({ tokens }: Talk, pieces: readonly Piece[]): boolean {
  const first = pieces.find(
    ({ role, from }) => role !== 'talk' && role !== 'correction' && !isCall(tokens[from]?.word),
  );
  const [who, is] = [tokens[first?.from ?? 0]?.word ?? '', tokens[(first?.from ?? 0) + 1]?.word ?? ''];
  return /^(that|it|this)$/.test(who) && /^(is|was)$/.test(is);
}

const isCall = (word: string | undefined): boolean => /^(oh|ah|well|no|okay)$/.test(word ?? '');

// What was told last without a break of that place and its parts on that side.
function runOf({ context }: Talk, site: Site, side: Side): readonly Told[] {
  const told = toldIn(context.found);
  const end = told.findLastIndex((one) => !(isWithin(one.site, site) && one.side === side));
  return told.slice(end + 1);
}

// "Left palm cut. Correction, right hand": the last thing told is of a part of it.
const innerOf = ({ context }: Talk, site: Site, side: Side): readonly Told[] =>
  context.last.flatMap((one) =>
    one.kind === 'finding' && one.side === side && one.site !== site && isWithin(one.site, site) ? [one] : [],
  );
