// A correction that names a place: the place, its side or its part is another.

import { type FindingStatement, isWithin, type Side, type Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import type { Change, CorrectionTarget } from '../../frame.ts';
import type { Piece } from '../../pieces/piece.ts';
import { itemsOf } from '../exam/items.ts';
import { hasRole, isSmallItem, phraseOf, phrasesIn } from '../sites/item.ts';
import { otherSide } from '../sites/side.ts';
import { sideIn } from '../sites/side-in.ts';
import type { Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { sameTarget } from './target.ts';

/** "Correction, right forearm", "the forearm is the left one": null where no place is named. */
export function siteAnew(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const items = itemsOf(talk, pieces);
  const ref = phraseOf(items.findLast((item) => item.type === 'site'))?.sites[0];
  if (ref === undefined) return null;
  const turned = ref.side ?? sideIn(pieces)?.side ?? null;
  // "The forearm is the left one" turns what was said of the forearm, whatever was said since.
  const part = partAnew(talk, ref, turned);
  if (part !== null) return part;
  const link = items.some((item) => isSmallItem(item, 'link') || hasRole(item, 'asking'));
  if (link && turned !== null && ref.side === null)
    return [{ change: { change: 'side', side: turned }, target: { site: ref.site } }];
  // "It's the right knee, not the left": it means what was said of the knee's other side.
  const instead = sideIn(pieces)?.instead ?? null;
  if (instead !== null && turned !== null && instead !== turned && isSaid(talk, ref.site))
    return [{ change: { change: 'side', side: turned }, target: { site: ref.site, side: instead } }];
  const change: Change = {
    change: 'site',
    site: ref.site,
    ...(turned === null ? {} : { side: turned }),
    ...(ref.level === null ? {} : { level: ref.level }),
  };
  // "Correction, T eleven" means what was said of that part of the spine, whatever was said since.
  // "I said right lower, it was left lower": the first place is what was said, and nothing else is moved.
  const [was, ...others] = phrasesIn(items).flatMap(({ sites }) => sites);
  if (was !== undefined && others.length > 0 && was.site === ref.site && was.side !== ref.side)
    return [{ change, target: { site: was.site, ...(was.side === null ? {} : { side: was.side }) } }];
  const last = talk.context.said.some((one) => 'site' in one && one.site === ref.site);
  // "Right elbow deformity", and after other things "correction, left elbow": only the elbow that was told of can be meant.
  const wrong = ref.sideKnown === 'spoken' && !last ? saidOfOther(talk, ref) : null;
  if (wrong !== null && ref.side !== null)
    return [{ change: { change: 'side', side: ref.side }, target: { site: ref.site, side: wrong } }];
  const inner = turned === null ? null : narrowerThan(talk, ref, turned);
  if (inner !== null && turned !== null) return [{ change: { change: 'side', side: turned }, target: inner }];
  const named = ref.level !== null && !last && isSaid(talk, ref.site);
  return [{ change, target: named ? { site: ref.site } : {} }];
}

// "That's the left arm I'm holding", of a right forearm: the narrower place that was said last stands.
function narrowerThan({ context }: Talk, { site }: SiteRef, turned: Side): CorrectionTarget | null {
  const [one, ...others] = context.said;
  if (one === undefined || others.length > 0 || !('site' in one) || one.site === undefined) return null;
  const was = otherSide(turned);
  const isInner = one.site !== site && isWithin(one.site, site);
  return isInner && was !== null && was !== turned && one.side === was ? { site: one.site, side: was } : null;
}

/** The other side of a place that was told of on that side alone, or null. */
function saidOfOther({ context }: Talk, { site, side }: SiteRef): Side | null {
  const other = otherSide(side);
  const of = (one: Side | null): boolean =>
    context.found.some((told) => told.startsWith(`${site} `) && told.split(' ').includes(one ?? ''));
  return other !== null && of(other) && !of(side) ? other : null;
}

// "Swelling of the inner ankle, sorry, the outer ankle": the place stands, and the part of it is another.
function partAnew(
  { context }: Talk,
  { site: place, parts, level }: SiteRef,
  turned: Side | null,
): readonly Changed[] | null {
  const [last, ...others] = context.last.filter((one) => one.kind === 'finding');
  if (last === undefined || others.length > 0 || level !== null || parts.length === 0) return null;
  const isSame = last.site === place && (turned === null || turned === last.side);
  if (!isSame || last.part === undefined || parts.every((one) => last.part?.includes(one))) return null;
  const statement: FindingStatement = { ...last, part: parts };
  return [{ change: { change: 'statement', statement }, target: sameTarget(statement) }];
}

/** True where something was told of that place. */
export const isSaid = ({ context }: Talk, site: Site): boolean =>
  context.found.some((one) => one.startsWith(`${site} `)) ||
  context.said.some((one) => 'site' in one && one.site === site);
