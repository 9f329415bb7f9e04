// A tree of phrases that grows only along the words that are really said, so reading costs the words and not the grammar.

import { open, type State } from './network.ts';

/** What a path through the grammar has collected: its tags in order (last first) and its cost. */
interface Path {
  readonly tag: { readonly text: string; readonly words: number; readonly before: Path['tag'] } | null;
  readonly cost: number;
}

interface Thread {
  readonly state: State & { type: 'word' | 'slot' };
  readonly path: Path;
}

export interface Ending {
  readonly rule: string;
  /** each with the number of words and slots that came before it */
  readonly tags: readonly { readonly text: string; readonly words: number }[];
  readonly cost: number;
}

export interface Branch {
  readonly depth: number;
  readonly endings: readonly Ending[];
  readonly words: ReadonlyMap<string, readonly Thread[]>;
  readonly slots: ReadonlyMap<string, readonly Thread[]>;
  readonly grown: Map<string, Branch>;
  readonly grownSlots: Map<string, Branch>;
}

/** The loops on the way since the last word: a repeat of something that may be empty would otherwise go round for ever. */
interface Round {
  readonly loop: State;
  readonly before: Round | null;
}

function goneRound(round: Round | null, loop: State): boolean {
  for (let at = round; at !== null; at = at.before) if (at.loop === loop) return true;
  return false;
}

const NO_PATH: Path = { tag: null, cost: 0 };

/** The tree's root for these first states. */
export const plantTree = (states: readonly State[]): Branch =>
  grow(
    states.map((state) => [state, NO_PATH]),
    0,
  );

/** The branch after one more word, or null where no phrase goes on with it. */
export function afterWord(branch: Branch, word: string): Branch | null {
  const known = branch.grown.get(word);
  if (known !== undefined) return known;
  const threads = branch.words.get(word);
  if (threads === undefined) return null;
  const next = advance(threads, branch.depth + 1);
  branch.grown.set(word, next);
  return next;
}

/** The branch after a slot was filled. */
export function afterSlot(branch: Branch, slot: string): Branch {
  const known = branch.grownSlots.get(slot);
  if (known !== undefined) return known;
  const next = advance(branch.slots.get(slot) ?? [], branch.depth + 1);
  branch.grownSlots.set(slot, next);
  return next;
}

const advance = (threads: readonly Thread[], depth: number): Branch =>
  grow(
    threads.map(({ state, path }) => [state.next, path]),
    depth,
  );

function grow(starts: readonly (readonly [State, Path])[], depth: number): Branch {
  const endings: Ending[] = [];
  const words = new Map<string, Thread[]>();
  const slots = new Map<string, Thread[]>();
  const put = (map: Map<string, Thread[]>, key: string, thread: Thread) => {
    const list = map.get(key);
    if (list === undefined) map.set(key, [thread]);
    else list.push(thread);
  };
  const visit = (state: State, path: Path, round: Round | null): void => {
    switch (state.type) {
      case 'word':
        put(words, state.word, { state, path });
        break;
      case 'slot':
        put(slots, state.rule, { state, path });
        break;
      case 'accept':
        endings.push({ rule: state.rule, tags: tagsOf(path), cost: path.cost });
        break;
      case 'tag': {
        const tag = { text: state.text, words: depth, before: path.tag };
        visit(state.next, { tag, cost: path.cost }, round);
        break;
      }
      case 'cost':
        visit(state.next, { tag: path.tag, cost: path.cost + state.cost }, round);
        break;
      case 'later':
        visit(open(state), path, round);
        break;
      case 'fork':
        for (const next of state.next) visit(next, path, round);
        break;
      case 'loop':
        if (!goneRound(round, state))
          for (const next of state.next) visit(next, path, { loop: state, before: round });
    }
  };
  for (const [state, path] of starts) visit(state, path, null);
  return { depth, endings, words, slots, grown: new Map(), grownSlots: new Map() };
}

function tagsOf(path: Path): Ending['tags'] {
  const tags: { text: string; words: number }[] = [];
  for (let tag = path.tag; tag !== null; tag = tag.before) tags.push({ text: tag.text, words: tag.words });
  return tags.reverse();
}
