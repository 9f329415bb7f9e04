// Rows of a long list that are drawn anew only where what they show has changed.

import type { VNode } from 'preact';
import { useRef } from 'preact/hooks';

/** Gives each thing its row: while it is still the same thing, the same row, which is then not worked out anew. */
export function useRows<T extends object>(make: (of: T) => VNode): (of: T) => VNode {
  const rows = useRef(new WeakMap<T, VNode>()).current;
  return (of) => {
    const known = rows.get(of);
    if (known !== undefined) return known;
    const made = make(of);
    rows.set(of, made);
    return made;
  };
}
