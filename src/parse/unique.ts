// A list with each member once, in the order they came.

/** Members are the same where what `like` makes of them is written the same as JSON. */
export const unique = <T>(all: readonly T[], like: (one: T) => unknown = (one) => one): readonly T[] => {
  if (all.length < 2) return all;
  const keys = all.map((one) => JSON.stringify(like(one)));
  return all.filter((_, i) => keys.indexOf(keys[i] ?? '') === i);
};
