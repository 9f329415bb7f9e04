// Takes each settled result once: some browsers give results again, or again with more words, by the same or the next place.

export interface Replays {
  /** a new session: places count from nothing again */
  begin(): void;
  /** the words that are new in the settled result at this place, or null; `at` is epoch ms */
  take(place: number, text: string, at: number): string | null;
}

/** A person who says the same again needs longer than this, ms; a browser that gives a result again does not. */
const AGAIN = 2000;

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[.,!?;]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** The words after as many as `before` has; null where there are none. */
function rest(text: string, before: string): string | null {
  const words = text.trim().split(/\s+/).slice(before.split(' ').length);
  return words.length === 0 ? null : words.join(' ');
}

/** `grows`: the browser gives the next place the words of the one before and more, as Android's does. */
export function createReplays(grows: boolean): Replays {
  let taken: string[] = [];
  let last: { readonly text: string; readonly at: number } | null = null;

  const keep = (place: number, text: string, at: number): void => {
    taken[place] = text;
    last = { text, at };
  };

  return {
    begin: () => {
      taken = [];
    },
    take: (place, text, at) => {
      const now = plain(text);
      if (now === '') return null;
      const before = taken[place];
      if (before !== undefined) {
        if (before === now || before.startsWith(`${now} `)) return null;
        keep(place, now, at);
        return now.startsWith(`${before} `) ? rest(text, before) : text;
      }
      const earlier = last;
      const isFirst = taken.length === 0;
      keep(place, now, at);
      if (!grows || earlier === null) return text;
      const isSoon = at - earlier.at < AGAIN;
      if (now === earlier.text) return isSoon ? null : text;
      // What was said in an earlier session grows no more, unless it comes at once.
      return now.startsWith(`${earlier.text} `) && (!isFirst || isSoon) ? rest(text, earlier.text) : text;
    },
  };
}
