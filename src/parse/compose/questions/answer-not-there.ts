// "Is your elbow sore?" "It's the wrist, not the elbow.", "no, but the left one is", "no, in the toes of the right": what was asked
// after is denied where it was asked, and stated where the answer says that it is.

import type { Clause } from '../../clauses/clause.ts';
import type { SiteRef } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import { pauseAfter, spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { findingStatement } from '../findings/finding-statement.ts';
import { oneSide, otherSide } from '../sites/side.ts';
import { sitesOf } from '../sites/sides.ts';
import { wholeSite } from '../sites/site-ref.ts';
import { bear, type HowKnown, place, type Said, type Talk } from '../talk.ts';
import { type Shape, shapeOf } from './answer-shape.ts';
import {
  BARE,
  NAMES_BOTH,
  OF_BOTH,
  OF_PART,
  OTHER_SIDE,
  PERHAPS,
  SAYS_IS,
  SURELY,
} from './not-there-forms.ts';
import { type AskedFindings, settle } from './settle.ts';
import { withSplitOff } from './split-off.ts';

const PUT_RIGHT = 'Was it said to be there, or was the question put right?';
const BOTH = 'Do both have it?';
const NEXT = 'Was it said to be there, or is that looked at next?';

interface There {
  readonly ref: SiteRef;
  readonly doubt: readonly string[];
}

/** Takes an answer that says where it is instead; false where it says more, or not surely of what was asked. */
export function answersNotThere(talk: Talk, clause: Clause, asked: AskedFindings): boolean {
  const [site, ...others] = asked.sites;
  if (site === undefined || others.length > 0 || !isClear(asked)) return false;
  const whole = withSplitOff(talk, clause);
  const pieces = withoutOkay(talk, whole);
  const pause = pauseAfter(talk.tokens, spanned(whole));
  // "No, right hip?" asks on; "no, just the knee now" goes on.
  if (pause === 'ask' || (pause === '' && spanned(whole).to < talk.tokens.length)) return false;
  const shape = shapeOf(talk, pieces, asked);
  if (shape === null) return false;
  const there = bothNamed(shape, site) ?? leadsElsewhere(shape, site, pieces !== whole);
  if (there === null) return false;
  // "Tell me if it hurts." "Left knee." "No, only the ankle.": the next one may be looked at.
  const { from, to } = spanned(pieces);
  if (asked.standing === true && !TELLS.test(saidIn(talk.tokens, from, to))) return false;
  const of = (ref: SiteRef, present: boolean, known: HowKnown, doubt: readonly string[]): readonly Said[] =>
    asked.findings.map(({ finding, quality }) => ({
      statement: findingStatement(finding, ref, present, present ? { quality } : {}),
      known: { finding: 'carried', present: 'inferred', ...known },
      doubt,
      from,
      to,
    }));
  bear(talk, { asked: null, sites: [wholeSite(there.ref)] });
  const { sideKnown } = there.ref;
  const denied = besides(site, there.ref);
  const isBoth = there.ref.site === site.site && there.ref.side === 'both';
  settle(talk, [
    // A question that was put right asked nothing of the first.
    ...(isBoth
      ? []
      : of(
          denied.ref,
          false,
          { site: 'carried', ...denied.known },
          there.doubt.filter((one) => one === PUT_RIGHT),
        )),
    ...of(
      there.ref,
      true,
      sideKnown === null || sideKnown === 'spoken' ? {} : { side: sideKnown },
      there.doubt,
    ),
  ]);
  place(talk, ...whole);
  return true;
}

// "No, just the knee, okay" does not call the knee sound.
function withoutOkay({ tokens }: Talk, pieces: readonly Piece[]): readonly Piece[] {
  const last = pieces.at(-1);
  const isOkay =
    last !== undefined && /^(okay|ok|alright|all right)$/.test(saidIn(tokens, last.from, last.to));
  const before = pieces.slice(0, -1);
  const isOnly = /^(no|nope|nah) (just|only) /.test(saidIn(tokens, pieces[0]?.from, last?.from));
  return isOkay && isOnly && before.at(-1)?.role !== 'small' ? before : pieces;
}

const TELLS = /\b(it is|that is|my|does|do|is|are|hurts)\b/;

// "Do both wrists hurt?" "No, just the right": the other of the two.
function besides(asked: SiteRef, there: SiteRef): { readonly ref: SiteRef; readonly known: HowKnown } {
  if (asked.side === 'both' && there.site === asked.site)
    return {
      ref: { ...asked, side: otherSide(there.side), sideKnown: 'inferred' },
      known: { side: 'inferred' },
    };
  return { ref: asked, known: asked.side === null ? {} : { side: 'carried' } };
}

const isClear = ({ negative, either, done, findings, sites }: AskedFindings): boolean =>
  !negative &&
  (!either || sites[0]?.side === 'both') &&
  done !== true &&
  findings.length === 1 &&
  findings.every(({ present }) => present);

function bothNamed(shape: Shape, site: SiteRef): There | null {
  for (const { form, not, there, parted } of NAMES_BOTH) {
    const said = form.exec(shape.words);
    if (said === null || (parted === true && !shape.isParted)) continue;
    const [, , , notSide, side] = said;
    const ref = placeOf(shape, said[there], site);
    if (ref === null || !isThat(shape, said[not], site)) return null;
    if (notSide === undefined || side === undefined)
      return isElse(ref, site)
        ? { ref, doubt: BARE.test(shape.words) && !isOwn(shape) ? [PUT_RIGHT] : [] }
        : null;
    // "Not the left foot, the right foot": of the place that has it.
    const [was, is] = [placeOf(shape, notSide, ref), placeOf(shape, side, ref)];
    const turns = was?.site === ref.site && is?.site === ref.site && is.side !== null;
    return turns && is.side === otherSide(was.side) ? { ref: is, doubt: [] } : null;
  }
  return null;
}

function leadsElsewhere(shape: Shape, site: SiteRef, isOkayed: boolean): There | null {
  const [, part, told] = OF_PART.exec(shape.words) ?? [];
  if (part !== undefined) {
    const parts = shape.parts[Number(part)] ?? [];
    const isOther =
      site.parts.length > 0 && parts.length > 0 && !parts.some((one) => site.parts.includes(one));
    return isOther ? { ref: { ...site, parts }, doubt: told === undefined ? [NEXT] : [] } : null;
  }
  // "No, both of them": nothing of the one is denied.
  const both = placeOf(shape, OF_BOTH.exec(shape.words)?.[1], site);
  if (both?.side === 'both' && oneSide([site]) !== null) return { ref: both, doubt: [BOTH] };
  const sure = SURELY.exec(shape.words) ?? SAYS_IS.exec(shape.words);
  const said = sure ?? PERHAPS.exec(shape.words) ?? OTHER_SIDE.exec(shape.words);
  const ref = said === null ? null : placeOf(shape, said[1], site);
  if (ref === null || !isElse(ref, site)) return null;
  return { ref, doubt: isOkayed || (sure === null && !isOwn(shape)) ? [NEXT] : [] };
}

// "No, from my mouth": the patient tells it.
const isOwn = ({ phrases }: Shape): boolean => phrases.length > 0 && phrases.every(({ mine }) => mine);

/** The place that these signs name; null where it is more than one, or its side is unclear. */
function placeOf({ phrases, sides }: Shape, signs: string | undefined, near: SiteRef): SiteRef | null {
  const [, at] = /S(\d)/.exec(signs ?? '') ?? [];
  const [, turn] = /D(\d)/.exec(signs ?? '') ?? [];
  const side = turn === undefined ? null : (sides[Number(turn)] ?? null);
  if (at === undefined) return side === null ? null : { ...near, side, sideKnown: 'spoken' };
  const phrase = phrases[Number(at)];
  // "My knee" is on a side that nobody said.
  const mind = side === null && phrase?.owned !== true ? [near] : [];
  const [ref, ...others] = phrase === undefined ? [] : sitesOf([phrase], mind);
  if (ref === undefined || others.length > 0) return null;
  if (side === null) return ref;
  return ref.side === null || ref.side === side ? { ...ref, side, sideKnown: 'spoken' } : null;
}

// What is denied must be what was asked after.
function isThat(shape: Shape, signs: string | undefined, site: SiteRef): boolean {
  const ref = placeOf(shape, signs, site);
  if (ref === null || ref.site !== site.site) return false;
  return ref.side === site.side || site.side === null || (site.side === 'both' && oneSide([ref]) !== null);
}

const isElse = (ref: SiteRef, site: SiteRef): boolean =>
  ref.site !== site.site ||
  (site.side === 'both' ? oneSide([ref]) !== null : site.side !== null && ref.side === otherSide(site.side));
