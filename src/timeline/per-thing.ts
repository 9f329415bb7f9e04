// What is worked out of one thing alone, an entry, a list or an input, is worked out once: none of them ever changes, they are
// only replaced; a long exam has thousands of entries, and several views ask.

/** `work`, done once for each thing and remembered for as long as the thing is. It must look at nothing else. */
export function perThing<Thing extends object, Made>(work: (thing: Thing) => Made): (thing: Thing) => Made {
  const known = new WeakMap<Thing, { readonly made: Made }>();
  return (thing) => {
    const before = known.get(thing);
    if (before !== undefined) return before.made;
    const made = work(thing);
    known.set(thing, { made });
    return made;
  };
}
