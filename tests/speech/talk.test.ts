// Two kinds of talk, and which of them some words are likelier in; ways to say a short "is". All sentences are invented.

import { describe, expect, it } from 'vitest';
import { linkGrammars, tokensIn } from '../../src/jsgf/index.ts';
import { readPronunciations, waysIn } from '../../src/speech/engine/pronunciations.ts';
import { withShortIs } from '../../src/speech/hearing/short-is.ts';
import { likelyTalk } from '../../src/speech/network/talk.ts';
import { triplesOf } from '../../src/speech/network/triples.ts';

describe('how likely words are in a talk', () => {
  const talkOf = (...sentences: readonly string[]) => likelyTalk(triplesOf([{ sentences, worth: 1 }], 50));
  const exam = talkOf('left knee tender', 'left hip tender', 'no pain in the left knee');
  const besides = talkOf('take the left fork', 'the rope is in the truck', 'left at the hut');
  const sum = (talk: typeof exam, words: string): number =>
    talk(words.split(' ')).reduce((all, chance) => all + chance, 0);

  it('tells the one kind from the other, in words that neither has in this order', () => {
    expect(sum(exam, 'tender left hip')).toBeGreaterThan(sum(besides, 'tender left hip') + 1);
    expect(sum(besides, 'the left truck')).toBeGreaterThan(sum(exam, 'the left truck') + 1);
  });

  it('is a chance of each word, and adds up to one over all words that can be heard, but for the end', () => {
    const said = 'left knee tender hip no pain in the'.split(' ');
    const others = Array.from({ length: 50 - said.length }, (_, i) => `word${i}`);
    const after = [...said, ...others].map((word) => exam(['left', word])[1] ?? 0);
    const sum = after.reduce((all, chance) => all + Math.exp(chance), 0);
    expect(sum).toBeGreaterThan(0.9);
    expect(sum).toBeLessThan(1);
    for (const chance of after) expect(chance).toBeLessThan(0);
  });

  it('has a chance for words that were never said, and none for no words', () => {
    expect(exam(['crampon'])[0]).toBeGreaterThan(-12);
    expect(exam([])).toEqual([]);
  });
});

describe('a short "is"', () => {
  it('is said after things and places, and after little words only as written', () => {
    expect(withShortIs('the shin is grazed and the calf is fine')).toEqual([
      'the shin is grazed and the calf is fine',
      "the shin's grazed and the calf's fine",
    ]);
    for (const kept of ['there is a graze', 'what is that', 'his pelvis is stable', 'where it is'])
      expect(withShortIs(kept)).toEqual([kept]);
  });

  it('is said as in the plural, or in the way that is written', () => {
    const ways = waysIn(
      readPronunciations("shin SH IH N\nhip HH IH P\nface F EY S\nface's F EY S AH Z\nwrist R IH S T\n"),
    );
    expect(["shin's", "hip's", "wrist's"].map(ways)).toEqual([['SH IH N Z'], ['HH IH P S'], ['R IH S T S']]);
    expect(ways("face's")).toEqual(['F EY S AH Z']);
    expect([ways("knee's"), ways('knee')]).toEqual([[], []]);
  });
});

describe('the words that a grammar knows', () => {
  it('are those of every rule, whatever its shape, each once', () => {
    const text =
      '#JSGF V1.0; grammar some; public <a> = left [upper] <b> {tag} | (knee | knee cap)+; <b> = arm*;';
    const linked = linkGrammars([{ file: 'some.jsgf', text }]);
    expect(linked.kind === 'errors' ? linked.errors : [...tokensIn(linked.grammars)].toSorted()).toEqual([
      'arm',
      'cap',
      'knee',
      'left',
      'upper',
    ]);
  });
});
