// "Only the left" narrows what was said of both sides of a place, however long before, and nothing else. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { standing as entriesStanding } from '../standing.ts';

const standing = (talk: string): readonly string[] =>
  entriesStanding(talk).map((entry) => {
    const asked = entry.doubt === undefined ? '' : '?';
    if (entry.kind === 'note') return `note: ${entry.text}${asked}`;
    if (entry.kind !== 'finding') return `${entry.kind}${asked}`;
    const { present, finding, side, site } = entry;
    return `${present ? '' : 'no '}${finding} ${side ?? ''} ${site}${asked}`;
  });

describe('one side alone', () => {
  it.each([
    ['both ankles swollen | only the right', ['swelling right ankle']],
    ['both ankles swollen | no, just the right one', ['swelling right ankle']],
    [
      'both ankles swollen | pulse ninety | actually it is only the right ankle',
      ['vital', 'swelling right ankle?'],
    ],
    [
      'both elbows grazed | belly soft | only the left elbow',
      ['no rigidity  abdomen', 'abrasion left elbow?'],
    ],
    [
      'burns on both forearms | neck no tenderness | actually only the left forearm is burned',
      ['no tenderness  neck', 'burn left forearm?'],
    ],
    [
      'both shins bruised | head no injury | sorry, only on the right shin',
      ['no abnormality  head', 'contusion right lower-leg?'],
    ],
    ['right elbow grazed | left elbow grazed | only the right', ['abrasion right elbow']],
    ['left heel bruised | right heel bruised | correction, only the right', ['contusion right heel']],
    [
      'both hands bruised | both hands numb | only the left hand is numb',
      ['contusion both hand', 'numbness left hand'],
    ],
  ])('is what is left of both: %s', (talk, expected) => {
    expect(standing(talk)).toEqual(expected);
  });

  it('is asked about where the other was told by itself and other things were said since', () => {
    const talk =
      'left heel bruised | right heel bruised | pelvis stable | correction, only the left heel is bruised';
    expect(standing(talk)).toEqual([
      'contusion left heel',
      'no instability  pelvis',
      'note: correction, only the left heel is bruised?',
    ]);
  });

  it.each([
    ['left elbow swollen | only the right', ['swelling left elbow', 'note: only the right?']],
    ['both elbows swollen | only the right knee', ['swelling both elbow', 'note: only the right knee?']],
    [
      'both shoulders tender | ribs tender on the right | only the left',
      ['tenderness both shoulder', 'tenderness right ribs', 'note: only the left?'],
    ],
  ])('stays in words where nothing was said of both that fits: %s', (talk, expected) => {
    expect(standing(talk)).toEqual(expected);
  });

  it.each([
    [
      'both calves tender | only the left one is swollen',
      ['tenderness both lower-leg', 'swelling left lower-leg'],
    ],
    ['any pain in your knees | only the left', ['visit', 'pain left knee']],
    ['only the left leg is burned', ['burn left leg']],
  ])('says what it says by itself: %s', (talk, expected) => {
    expect(standing(talk)).toEqual(expected);
  });
});

describe('one side alone of what was denied of both', () => {
  it('is asked about, and long after it stays in words', () => {
    expect(standing('no deformity of both hips | actually only the left')).toEqual([
      'no deformity left hip?',
    ]);
    expect(standing('both knees no swelling | left knee swollen | only the left knee')).toEqual([
      'no swelling both knee',
      'swelling left knee',
      'note: only the left knee?',
    ]);
  });
});
