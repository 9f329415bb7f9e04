// The numbers of parts as people say and type them to each other: `3, 7-9`.

/** `3, 7-9`: runs are closed up. */
export function partsInWords(parts: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const part of parts) {
    const last = runs.at(-1);
    if (last !== undefined && part === last[1] + 1) last[1] = part;
    else runs.push([part, part]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from}-${to}`)).join(', ');
}

/** The parts that a text names, within 1 and `of`, in order; null where it names none or is something else. */
export function readParts(text: string, of: number): readonly number[] | null {
  const found = new Set<number>();
  const words = text.split(/[,;\s]+/).filter((word) => word !== '');
  for (const word of words) {
    const [, from, to = from] = /^(\d{1,4})(?:[-–](\d{1,4}))?$/.exec(word) ?? [];
    if (from === undefined) return null;
    for (let part = Number(from); part <= Math.min(Number(to), of); part += 1) if (part >= 1) found.add(part);
  }
  return found.size === 0 ? null : [...found].sort((a, b) => a - b);
}
