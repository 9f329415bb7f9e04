// What becomes of words beside ordinary talk: the rest stands in doubt, and scraps of sentences do not stand. Words invented.

import { describe, expect, it } from 'vitest';
import type { HeardWord } from '../../src/speech/engine/decoder.ts';
import { chunksOf } from '../../src/speech/hearing/chunks.ts';
import { withoutScraps } from '../../src/speech/hearing/scraps.ts';
import { HARDLY_HEARD, NEXT_TO_UNHEARD, utterancesOf } from '../../src/speech/hearing/utterances.ts';

/** Words of 0.4 s, one after another; a number is a pause in seconds. */
function words(...said: readonly (string | number)[]): readonly HeardWord[] {
  let at = 0;
  return said.flatMap((word) => {
    const start = at;
    at += typeof word === 'number' ? word : 0.4;
    return typeof word === 'number' ? [] : [{ word, start, end: at, frames: 40, fit: -1000 }];
  });
}

/** Words that stand for a part that was refused. */
const OTHER = new Set(['really', 'rope', 'sick', 'harness']);

const heard = (...said: readonly (string | number)[]) => {
  const parts = chunksOf(words(...said)).map((chunk) => ({
    words: chunk.map((word) => ({ ...word, confidence: 0.9 })),
    confidence: 0.9,
    understood: !chunk.some(({ word }) => OTHER.has(word)),
  }));
  return utterancesOf(withoutScraps(parts), 10, 20);
};

describe('speech that was heard', () => {
  it('in several breaths is one utterance, so that a "no" is not parted from what it denies', () => {
    expect(heard('no', 0.3, 'swelling', 'left', 'knee')).toMatchObject([
      { text: 'no swelling left knee', understood: true, doubt: [], start: 10 },
    ]);
  });

  it('has a comma where the pause was long', () => {
    expect(heard('left', 'knee', 0.5, 'no', 'swelling')[0]?.text).toBe('left knee, no swelling');
  });

  it('without a pause after talk is refused with it: its "no" may be in that part', () => {
    expect(heard('really', 'swelling', 'left', 'knee')).toMatchObject([{ understood: false }]);
  });

  it('soon after talk stands in doubt', () => {
    expect(heard('the', 'rope', 0.3, 'left', 'knee', 'swollen')).toMatchObject([
      { understood: false, start: 10 },
      { text: 'left knee swollen', understood: true, doubt: [NEXT_TO_UNHEARD] },
    ]);
  });

  it('long after talk stands without doubt', () => {
    expect(heard('the', 'rope', 0.9, 'left', 'knee', 'swollen')[1]).toMatchObject({ doubt: [] });
  });

  it.each([
    [['harness', 0.1, 'swelling']],
    [['harness', 0.1, 'knee', 'swollen', 0.1, 'right', 'side']],
    [['and', 'before', 0.1, 'sick']],
  ])('as a scrap beside talk (%j) is refused too, and so is the scrap beside that', (said) => {
    expect(heard(...said).map(({ understood }) => understood)).toEqual([false]);
  });

  it('keeps the best guess of what was refused, in plain words, and gives its times', () => {
    const [one] = heard('the', 'rope');
    expect(one?.words.map(({ word }) => word)).toEqual(['the', 'rope']);
    expect(one?.text).toBe('[not understood, 00:10-00:10]');
  });
});

describe('a word that hardly fits its sound', () => {
  const doubts = (unsure: string, other: readonly (string | number)[] = []) => {
    const said = words('left', 'thumb', 'is', 'swollen').map((word) => ({
      ...word,
      confidence: word.word === unsure ? 0.2 : 0.9,
    }));
    const part = { words: said, confidence: 0.7, understood: true, otherwise: [words(...other)] };
    return utterancesOf([part], 0, 2).flatMap(({ doubt }) => doubt);
  };

  it('puts all that was said with it in doubt', () => {
    expect(doubts('thumb')).toEqual([HARDLY_HEARD]);
  });

  it('does not where it is a small one, unless the sound was heard in other words too', () => {
    expect(doubts('is')).toEqual([]);
    expect(doubts('is', ['left', 'thumb', 'is', 'swollen'])).toEqual([]);
    expect(doubts('is', ['left', 'thumb', "isn't", 'swollen'])).toEqual([HARDLY_HEARD]);
  });
});
