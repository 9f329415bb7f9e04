// The words of the grammar for sides and parts tell left from right, both from one, and before from after.

import { describe, expect, it } from 'vitest';
import { siteWords } from './site-words.ts';

describe('the words for sides', () => {
  it.each([
    ['left knee', 'left'],
    ["the patient's right knee", 'right'],
    ['his left knee', 'left'],
    ['left-hand side of the chest', 'left'],
    ['right-sided ribs', 'right'],
    ['L knee', 'left'],
    ['rt forearm', 'right'],
    ['knee on the left', 'left'],
    ['knee, over on his right side', 'right'],
    ['ribs on the left hand side', 'left'],
    ['knee, left side', 'left'],
    ['knee, the right one', 'right'],
    ['both knees', 'both'],
    ['knees on both sides', 'both'],
    ['either knee', 'both'],
    ['bilateral knees', 'both'],
    ['knees bilaterally', 'both'],
    ['left and right knee', 'both'],
    ['midline of the neck', 'midline'],
    ['neck, in the midline', 'midline'],
    ['the other knee', 'mirror'],
    ['opposite knee', 'mirror'],
    ['contralateral knee', 'mirror'],
  ])('say the side once: %s', (line, side) => {
    expect(siteWords(line).sides).toEqual([side]);
  });

  it.each(['swelling on the other side', 'the opposite side', 'contralateral side', 'the other one'])(
    'turn to the side that was not the last: %s',
    (line) => {
      expect(siteWords(line)).toMatchObject({ sides: ['mirror'], rules: ['sides.mirror'] });
    },
  );

  it.each([
    ['same on the right', 'right'],
    ['same again on the left', 'left'],
    ['ditto on his left side', 'left'],
    ['left is the same', 'left'],
    ['same for the right', 'right'],
    ['same on the other side', 'mirror'],
    ["and the other side's the same", 'mirror'],
    ['other side same', 'mirror'],
  ])('say the same again of a side: %s', (line, side) => {
    expect(siteWords(line)).toMatchObject({ sides: [side], marks: ['same'] });
  });

  it('keep each side with its own site', () => {
    expect(siteWords('left elbow, right knee').sides).toEqual(['left', 'right']);
    expect(siteWords('elbow on the right, wrist on the left').sides).toEqual(['right', 'left']);
  });

  it.each(['the same as before', 'lefty', 'write it down', 'rights and wrongs', 'the day before'])(
    'do not hear a side with certainty in: %s',
    (line) => {
      const { sides, marks } = siteWords(line);
      expect(sides.length === 0 || marks.includes('homophone')).toBe(true);
    },
  );
});

describe('the words for parts', () => {
  it.each([
    ['distal forearm', 'distal'],
    ['proximal end of the forearm', 'proximal'],
    ['mid-shaft forearm', 'mid'],
    ['middle third of the forearm', 'mid'],
    ['halfway down the forearm', 'mid'],
    ['front of the hip', 'anterior'],
    ['anterior hip', 'anterior'],
    ['back of the shoulder', 'posterior'],
    ['posterior shoulder', 'posterior'],
    ['inner forearm', 'medial'],
    ['ulnar side of the wrist', 'medial'],
    ['outside of the hip', 'lateral'],
    ['radial aspect of the wrist', 'lateral'],
    ['top of the shoulder', 'upper'],
    ['the lower part of the chest', 'lower'],
    ['bottom of the chest', 'lower'],
    ['forearm at the distal end', 'distal'],
    ['forearm, proximally', 'proximal'],
    ['knee on the inside', 'medial'],
    ['hip laterally', 'lateral'],
    ['chest towards the top', 'upper'],
    ['knee round the back', 'posterior'],
  ])('say the part once: %s', (line, part) => {
    expect(siteWords(line).parts).toEqual([part]);
    expect(siteWords(line).sites).toHaveLength(1);
  });

  it('say two parts where the word holds two', () => {
    expect(siteWords('anterolateral knee').parts).toEqual(['anterior', 'lateral']);
  });

  it.each([
    'middle finger',
    'inner ear',
    'upper lip',
    'upper arm',
    'lower leg',
    'upper quadrant',
    'inside his mouth',
  ])('are no part where they belong to the name of a site: %s', (line) => {
    expect(siteWords(line).parts).toEqual([]);
  });
});
