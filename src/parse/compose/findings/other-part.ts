// Whether a part that stands after a finding contradicts the part of the place that the finding is at.

import type { Part } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import type { Owned } from './attribute-owners.ts';

const OPPOSITE: Readonly<Partial<Record<Part, Part>>> = {
  upper: 'lower',
  lower: 'upper',
  anterior: 'posterior',
  posterior: 'anterior',
  medial: 'lateral',
  lateral: 'medial',
  proximal: 'distal',
  distal: 'proximal',
};

/** True for the "inner side" of "outer side of the calf tender inner side fine". */
export const isOfOtherPart = (owner: Owned, finding: Piece, refs: readonly SiteRef[]): boolean =>
  owner.piece.from > finding.from &&
  (owner.attributes.part ?? []).some((part) => {
    const other = OPPOSITE[part];
    return other !== undefined && refs.some(({ parts }) => parts.includes(other));
  });
