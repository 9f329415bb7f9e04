// Pieces that say nothing by themselves and may stand between the parts of what is said.

import type { Piece, Role } from '../pieces/piece.ts';

const LIGHT: ReadonlySet<Role> = new Set(['small', 'talk', 'negation', 'answer', 'side', 'attribute']);

/** True for small words, plain talk, yes and no, a side and an attribute. */
export const isLight = ({ role }: Piece): boolean => LIGHT.has(role);

/** True for small words and plain talk only. */
export const isChatter = ({ role }: Piece): boolean => role === 'small' || role === 'talk';
