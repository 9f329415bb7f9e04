// A piece taken for something else than the grammar says, where the words around it ask for that.

import type { Piece, Role } from './piece.ts';

/** The piece in this role, with this one rule and these tags as its only reading. */
export const reread = (
  piece: Piece,
  role: Role,
  rule: string,
  tags: Readonly<Record<string, string>>,
): Piece => ({
  ...piece,
  role,
  islands: piece.islands.slice(0, 1).map((island) => ({
    ...island,
    file: rule.split('.')[0] ?? rule,
    rule,
    tags: Object.entries(tags).map(([key, value]) => ({ key, value })),
  })),
});
