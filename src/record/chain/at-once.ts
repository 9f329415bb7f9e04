// Many things that each have to be waited for, some of them at once: a long log has a hundred thousand events, and as many
// promises side by side take more memory than the log itself.

/** Enough that an engine's threads are never without work; more at once is no quicker. Measured, no source. */
const AT_ONCE = 500;

/** What the work makes of each, in their order. */
export async function eachOf<Thing, Made>(
  all: readonly Thing[],
  work: (thing: Thing) => Promise<Made>,
): Promise<readonly Made[]> {
  const made: Made[] = [];
  for (let at = 0; at < all.length; at += AT_ONCE)
    for (const one of await Promise.all(all.slice(at, at + AT_ONCE).map(work))) made.push(one);
  return made;
}
