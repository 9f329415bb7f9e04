// What hearing made of a sentence, held against what the same sentence gives when it is typed.

import type { Entry } from '../../../src/record/index.ts';

/** Fields that do not say what is the case. */
const ASIDE = new Set(['id', 'at', 'heardAt', 'heard', 'state', 'known', 'doubt', 'group', 'utterance']);

export interface Fact {
  readonly entry: Entry;
  /** what it is about: kind, site and what was looked for; the same for two sides, polarities or values */
  readonly about: string;
  /** every other leaf, as path=value */
  readonly slots: readonly string[];
}

const ABOUT: readonly string[] = ['kind', 'site', 'finding', 'aspect', 'vital', 'topic', 'care'];

function leaves(value: unknown, path: string): readonly string[] {
  if (value === null || typeof value !== 'object') return [`${path}=${String(value)}`];
  return Object.entries(value)
    .filter(([key]) => !ASIDE.has(key))
    .flatMap(([key, inner]) => leaves(inner, path === '' ? key : `${path}.${key}`));
}

/** What the entries state; notes and struck ones state nothing. */
export const factsOf = (entries: readonly Entry[]): readonly Fact[] =>
  entries
    .filter(({ kind, state }) => kind !== 'note' && state !== 'struck' && state !== 'replaced')
    .map((entry) => {
      const all = leaves(entry, '');
      const isAbout = (leaf: string): boolean => ABOUT.includes(leaf.slice(0, leaf.indexOf('=')));
      return {
        entry,
        about: all.filter(isAbout).join(' '),
        slots: all.filter((leaf) => !isAbout(leaf)),
      };
    });

export interface Score {
  /** slots said, and those of them that were heard */
  readonly slots: number;
  readonly met: number;
  /** an entry that says another side, polarity or value than was said, and is not marked */
  readonly wrong: boolean;
  /** an entry about something that was not said at all, and is not marked */
  readonly invented: boolean;
  /** either of the two, but marked */
  readonly marked: boolean;
  /** what is true is marked too, so that it is asked about for nothing */
  readonly asked: boolean;
  /** entries heard, of whatever kind but notes */
  readonly entries: number;
}

/** An entry that the hearing itself doubts says so in words that begin like this. */
const isMarked = ({ entry }: Fact): boolean =>
  (entry.doubt ?? []).some((doubt) => doubt.startsWith('heard '));

export function scoreOf(said: readonly Fact[], heard: readonly Fact[]): Score {
  const left = new Set(heard);
  let [slots, met] = [0, 0];
  for (const fact of said) {
    slots += 1 + fact.slots.length;
    let best: Fact | null = null;
    let most = -1;
    for (const other of left) {
      const same = fact.slots.filter((slot) => other.slots.includes(slot)).length;
      if (other.about === fact.about && same > most) [best, most] = [other, same];
    }
    if (best === null) continue;
    left.delete(best);
    met += 1 + most;
  }
  const untrue = heard.filter((one) => !said.some((fact) => isSame(fact, one)));
  const [marked, bare] = [untrue.filter(isMarked), untrue.filter((one) => !isMarked(one))];
  const isAboutSaid = ({ about }: Fact): boolean => said.some((fact) => fact.about === about);
  return {
    slots,
    met,
    wrong: bare.some(isAboutSaid),
    invented: bare.some((one) => !isAboutSaid(one)),
    marked: marked.length > 0,
    asked: heard.some((one) => isMarked(one) && !untrue.includes(one)),
    entries: heard.length,
  };
}

// Words that were missed leave an entry that says less; that is a loss, counted in the slots, and nothing untrue. A side
// is another matter: without it the entry is about something else.
const isSame = (said: Fact, heard: Fact): boolean =>
  said.about === heard.about &&
  heard.slots.every((slot) => said.slots.includes(slot) || slot === 'side=null');

/** Words put in, left out or taken for others, by the least number of steps. */
export function wordErrors(said: readonly string[], heard: readonly string[]): number {
  let row = Array.from({ length: heard.length + 1 }, (_, i) => i);
  for (const [i, word] of said.entries()) {
    const next = [i + 1];
    for (const [j, other] of heard.entries())
      next.push(
        Math.min((row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1, (row[j] ?? 0) + (word === other ? 0 : 1)),
      );
    row = next;
  }
  return row[heard.length] ?? 0;
}
