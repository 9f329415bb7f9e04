// What is worked out of a few things of a long list is worked out once for as long as they are the same ones, whichever
// list they were picked from: one more entry leaves nearly all such sets as they were.

/** Sets that begin with the same thing and are remembered beside each other: reports of several kinds ask by turns. */
const KEPT = 3;

interface Known<M, T> {
  readonly members: readonly M[];
  readonly of: T;
}

const isSame = <M>(one: readonly M[], other: readonly M[]): boolean =>
  one.length === other.length && one.every((member, index) => member === other[index]);

/** `work`, done once for the same members in the same order. It must look at nothing but them. */
export function perMembers<M extends object, T>(
  work: (members: readonly [M, ...M[]]) => T,
): (members: readonly [M, ...M[]]) => T {
  const known = new WeakMap<M, readonly Known<M, T>[]>();
  return (members) => {
    const [first] = members;
    const before = known.get(first) ?? [];
    const again = before.find((one) => isSame(one.members, members));
    if (again !== undefined) return again.of;
    const of = work(members);
    known.set(first, [{ members: [...members], of }, ...before.slice(0, KEPT - 1)]);
    return of;
  };
}
