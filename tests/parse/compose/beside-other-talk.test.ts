// What is clear in a breath although others, long ago, a means or a tag stand beside it, and what such words still hold. Invented talk.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

const signs = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'vital' ? [[one.vital, Object.values(one.value)[0]]] : []));

const care = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'care' ? [[one.care, one.site, one.side]] : []));

const history = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'history' ? [`${one.topic}: ${one.text}`] : []));

const notes = (talk: string) => standing(talk).flatMap((one) => (one.kind === 'note' ? [one.text] : []));

describe('somebody else who is only spoken of', () => {
  it.each([
    ['sats ninety six, talking to me about his son', [['oxygen-saturation', 96]]],
    [
      'pulse one ten, resps twenty, moaning about his boss',
      [
        ['pulse', 110],
        ['respirations', 20],
      ],
    ],
    ['he is chatting to me about his dog, sats ninety eight', [['oxygen-saturation', 98]]],
    ['pulse ninety, his dad says he is diabetic', [['pulse', 90]]],
  ] as const)('holds his own breath in %s', (talk, means) => expect(signs(talk)).toEqual(means));

  it('leaves a finding before it', () =>
    expect(found('left knee swollen, asking for his mum')).toEqual([['knee', 'left', 'swelling', true]]));

  it.each([
    "pulse one forty, that's his brother's",
    'pulse one forty, his brother',
    'his mate was breathing at thirty, pulse one forty',
    'pulse ninety, his dad has one of sixty',
  ])('holds what is his in %s', (talk) => {
    expect(signs(talk)).toEqual([]);
    expect(notes(talk).join(' ')).toContain('pulse');
  });

  it.each(['left knee swollen, belongs to his mate', 'asked about his brother who has a swollen knee'])(
    'is the one who has it in %s',
    (talk) => expect(found(talk)).toEqual([]),
  );
});

describe('the means of care', () => {
  it.each([
    ['splint on the left shin padded with my own fleece', [['splint', 'lower-leg', 'left']]],
    ["right ankle wrapped with his brother's scarf", [['bandage', 'ankle', 'right']]],
    ['sling on the left arm made from my rope', [['sling', 'arm', 'left']]],
  ])('is nobody in %s', (talk, means) => expect(care(talk)).toEqual(means));

  it.each([
    'splint on his brother',
    'wrapped his hand up with his brother who has a broken arm',
    'my own back hurts',
  ])('is none in %s', (talk) => {
    expect(care(talk)).toEqual([]);
    expect(found(talk)).toEqual([]);
  });
});

describe('what is so today', () => {
  it('is told past what was long ago', () => {
    expect(found('he broke that leg years ago, the left knee is swollen')).toEqual([
      ['knee', 'left', 'swelling', true],
    ]);
    expect(
      history('any conditions | I had my left knee done six years ago, and I have a touch of asthma'),
    ).toEqual(['past-history: I had my left knee done six years ago', 'past-history: a touch of asthma']);
  });

  it.each([
    'had a rash last year, it was all over the chest',
    'broke his left wrist years ago, it is a bit swollen',
    'had a rash on the chest last year, left arm was swollen too',
  ])('is not what was so then: %s', (talk) => expect(found(talk)).toEqual([]));

  it('keeps a place of long ago', () => expect(notes('he had a bad back years ago')).toHaveLength(1));
});

describe('a sign that is not liked', () => {
  it.each([
    "I don't like his skin, it's grey and clammy",
    "I don't like the look of his skin, it's grey and clammy",
  ])('is told in %s', (talk) => expect(signs(talk)).toEqual([['skin', 'ashen']]));

  it.each(['his skin is not pale', 'not pale and clammy'])('is denied in %s', (talk) =>
    expect(signs(talk)).toEqual([]),
  );
});

describe('a tag with a subject of its own', () => {
  it.each([
    ["there's a nail stuck in his right heel and we're not touching that, are we, my love?", 'heel'],
    ["there's a graze on the right elbow and you're not worried, are you?", 'elbow'],
    ["his left wrist is swollen and I'm leaving the watch on, am I?", 'wrist'],
  ])('asks of that alone: %s', (talk, site) => expect(found(talk).map(([at]) => at)).toEqual([site]));

  it.each([
    'you landed on your left wrist and you felt a crack, you hurt it, did you?',
    "does your left wrist hurt and you can't move it, can you?",
    'is the left wrist swollen and we are leaving the watch on, are we?',
  ])('asks of all in %s', (talk) => expect(found(talk)).toEqual([]));
});

describe('what is left in a wound', () => {
  it.each([
    ['stick through the left calf, leaving it in, dressing around it', [['dressing', 'lower-leg', 'left']]],
    [
      "branch stuck in his left thigh, we're leaving that in, bandage round it",
      [['bandage', 'thigh', 'left']],
    ],
  ])('puts no care off: %s', (talk, means) => {
    expect(care(talk)).toEqual(means);
    expect(notes(talk).join(' ')).toContain('leaving');
  });

  it('is no care that was left out', () => expect(care('leaving the splint off, left shin')).toEqual([]));
});

describe('somebody wrapped up', () => {
  it.each([
    "I've wrapped you up in the foil blanket",
    "we've popped you into the sleeping bag",
    "I've put him in the bivvy bag",
  ])('is warmed: %s', (talk) => expect(care(talk)).toEqual([['warming', undefined, undefined]]));

  it.each([
    "I'm going to put you in the foil blanket",
    "we haven't wrapped him in the foil blanket",
    'his mate wrapped him in the foil blanket',
    'has anyone tucked him into the sleeping bag?',
  ])('is not yet: %s', (talk) => expect(care(talk)).toEqual([]));
});
