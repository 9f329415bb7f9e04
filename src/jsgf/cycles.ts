// Finds rules that reach themselves, each cycle once and named in full, without recursion of its own.

/**
 * Takes each rule's references and gives the cycles among them: `[['a.x', 'a.y']]` where x needs y and y needs x.
 * Rules that merely lead to a cycle are not in it. Linear in the number of references.
 */
export function cyclesOf(references: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const left = withoutLeaves(references);
  const seen = new Set<string>();
  const cycles: string[][] = [];
  for (const start of left) {
    const path: string[] = [];
    const place = new Map<string, number>();
    let at: string | undefined = start;
    while (at !== undefined && !seen.has(at)) {
      seen.add(at);
      place.set(at, path.length);
      path.push(at);
      at = references.get(at)?.find((name) => left.has(name));
    }
    const begin = at === undefined ? undefined : place.get(at);
    if (begin !== undefined) cycles.push(path.slice(begin));
  }
  return cycles;
}

/** The rules from which a cycle can be reached: what is left when rules whose references are all settled go. */
function withoutLeaves(references: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const users = new Map<string, string[]>();
  const open = new Map<string, number>();
  for (const [name, used] of references) {
    open.set(name, used.length);
    for (const target of used) {
      const known = users.get(target);
      if (known) known.push(name);
      else users.set(target, [name]);
    }
  }
  const settled = [...open].filter(([, count]) => count === 0).map(([name]) => name);
  for (const name of settled) {
    open.delete(name);
    for (const user of users.get(name) ?? []) {
      const count = (open.get(user) ?? 0) - 1;
      open.set(user, count);
      if (count === 0) settled.push(user);
    }
  }
  return new Set(open.keys());
}
