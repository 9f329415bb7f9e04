// "Right collarbone." "Any tingling in your fingers?": what is felt at the end of a limb after a place at the trunk may be on either side, so
// that side is not carried over.

import { isWithin, regionOf, type Site } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import type { Said, Talk } from '../talk.ts';

/** The look of a question, less a side that was carried to it from so far. */
export function withoutFarSide({ context, tokens }: Talk, { pieces }: Clause, look: Said): Said {
  const { statement, known } = look;
  if (statement.kind !== 'visit' || known?.side !== 'carried' || !isEnd(statement.site)) return look;
  if (!pieces.some(({ role }) => role === 'finding')) return look;
  const { from, to } = spanned(pieces);
  if (SAME_SIDE.test(saidIn(tokens, from, to))) return look;
  const isNear = context.sites.some(({ site }) => regionOf(site) === regionOf(statement.site));
  if (isNear) return look;
  const { side: _, ...others } = known;
  return { ...look, statement: { ...statement, side: null }, known: others };
}

const isEnd = (site: Site): boolean => isWithin(site, 'hand') || isWithin(site, 'foot');

const SAME_SIDE = /\b(that|this|the same) (side|hand|foot|arm|leg)\b/;
