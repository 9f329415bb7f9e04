// The states that a word may say of the other side of what was said of one.

export const STATES = [
  'there',
  'strong',
  'weak',
  'thready',
  'bounding',
  'less',
  'absent',
  'none',
  'not',
] as const;

/** `not` is "but not the left": what was said of the one side is not so of the other. */
export type State = (typeof STATES)[number];
