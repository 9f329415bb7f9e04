// Hears a sentence once more, in which each word that matters may be any of its kind: a word that hardly fits better than
// another is unsure.

import { createDecoder, type HeardWord } from '../engine/decoder.ts';
import type { ModelFiles } from '../engine/model-files.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import type { Network } from '../network/network.ts';
import type { CanStand } from '../network/substitutes.ts';
import type { NearWords } from './near.ts';

export interface SecondHearing {
  /** of each word, whether another of its kind fits the sound almost as well */
  rivals(words: readonly HeardWord[], sound: Float32Array): readonly boolean[];
  close(): void;
}

/** The chance of the word that was heard, against each of the others: what is nearer than this makes it unsure. */
const HANDICAP = 0.1;

/**
 * A decoder of its own for small networks, without the model's dictionary. What `substitutes` does not let stand in a word's
 * place is no rival of it. Throws where the model's files are damaged.
 */
export function createSecondHearing(
  module: SoundModule,
  model: ModelFiles,
  near: NearWords,
  waysToSay: (word: string) => readonly string[],
  substitutes: (words: readonly string[]) => CanStand = () => () => true,
): SecondHearing {
  const known = new Set<string>();
  const pronunciations = new Map<string, readonly string[]>();
  for (const word of [...near.keys(), ...[...near.values()].flat()]) {
    known.add(word);
    pronunciations.set(word, waysToSay(word));
  }
  const decoder = createDecoder(module, { model, pronunciations, network: () => rowOf([['left']]) });
  return {
    rivals: (words, sound) => {
      if (words.length === 0) return [];
      const canStand = substitutes(words.map(({ word }) => word));
      const choices = words.map(({ word }, index) =>
        (near.get(word) ?? [word]).filter((other) => other === word || canStand(index, other)),
      );
      if (choices.every((kind) => kind.length === 1)) return words.map(() => false);
      const others = words.map(({ word }) => word).filter((word) => !known.has(word));
      decoder.learn(new Map(others.map((word) => [word, waysToSay(word)])));
      for (const word of others) known.add(word);
      decoder.listenFor(
        rowOf(
          choices,
          words.map(({ word }) => word),
        ),
      );
      const heard = decoder.decode(sound).words;
      // Where the sound is that of no such sentence, nothing that matters in it is sure.
      if (heard.length !== words.length) return choices.map((kind) => kind.length > 1);
      return words.map(({ word }, index) => heard[index]?.word !== word);
    },
    close: () => decoder.close(),
  };
}

/** One word after another, each any of its kind; the one that was heard is less likely than the others. */
function rowOf(choices: readonly (readonly string[])[], heard: readonly string[] = []): Network {
  return {
    states: choices.length + 1,
    end: choices.length,
    silent: [],
    arcs: choices.flatMap((kind, from) =>
      kind.map((word) => ({
        from,
        to: from + 1,
        word,
        chance: kind.length > 1 && word === heard[from] ? HANDICAP : 1,
      })),
    ),
  };
}
