// A question is no finding; its answer is, and takes up what was asked; what an answer cannot settle stays in words. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read, statementsOf } from '../read.ts';

const SAID = ['finding', 'csm', 'vital', 'history', 'care', 'note'] as const;
const said = (talk: string) => read(talk, ...SAID);

describe('a question', () => {
  it.each([
    ['any pain in your back', ['visit back']],
    ['is the left knee swollen', ['visit left knee']],
    ['does your left shoulder hurt | let me look at that', ['visit left shoulder']],
    ['does that hurt', []],
    ['left wrist bruised | any pain there?', ['contusion left wrist']],
    ['left wrist bruised | does it hurt right there', ['contusion left wrist']],
    ['left wrist bruised | does it hurt a lot?', ['contusion left wrist']],
  ])('that nobody answers leaves a visit at most: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it('that runs on for longer than anybody asks is kept in words', () => {
    const talk =
      'does the left wrist and the right knee and the left shin and the back of the neck and the other bits look swollen to anybody';
    expect(read(talk, 'note')).toEqual([
      expect.stringContaining('the right knee and the left shin and the back of the neck'),
    ]);
    expect(
      read('does your left hip or your left knee hurt at all when I press it like this', 'note'),
    ).toEqual([]);
  });

  it('gives way to what is stated after it', () => {
    expect(said('does the right elbow hurt? the left wrist is bruised')).toEqual(['contusion left wrist']);
    expect(said("where's that coming from, two centimetre cut over the right ear")).toEqual([
      'laceration right ear size=2+cm',
    ]);
  });
});

describe('an answer to a question after findings', () => {
  it.each([
    ['does your hip hurt | no', ['no pain hip']],
    ['does your left hip hurt | yes', ['pain left hip']],
    ['is your neck sore | yeah a little', ['pain neck severity=mild']],
    ['pain in your left thumb? no', ['no pain left thumb']],
    ['does your left elbow hurt | it does not', ['no pain left elbow']],
    [
      'any tenderness or swelling in your right knee | no',
      ['no tenderness right knee', 'no swelling right knee'],
    ],
    ['you have no pain in your hip, do you | no', ['no pain hip']],
    ['is your thigh sore? no. and your knee? yes', ['no pain thigh', 'pain knee']],
    ['are your knees sore | right one yes, left one no', ['pain right knee', 'no pain left knee']],
    ['where does it hurt | my left ankle', ['pain left ankle']],
    ['does it hurt here on your right wrist | bruised', ['contusion right wrist']],
    [
      'jaw is fine | any tenderness when i press on your cheekbones | nope',
      ['no abnormality jaw', 'no tenderness both cheek'],
    ],
    ["left knee | does it hurt where i'm pressing on the wrist | no", ['no pain wrist']],
    ['is your jaw sore | only when i bite down', ['pain jaw']],
    ['left wrist | does it hurt there yeah', ['pain left wrist']],
    ['left wrist | does it hurt? right there', ['pain left wrist']],
    ['left wrist | any pain there? a bit', ['pain left wrist severity=mild']],
    ['is your elbow okay | yes', ['no abnormality elbow']],
    ['is your elbow okay | no', ['abnormality elbow']],
    ['any pain in either wrist | the left one', ['pain left wrist']],
    ['any elbow pain? any hip pain? no and no', ['no pain elbow', 'no pain hip']],
    ['any elbow pain? any hip pain? yes and no', ['pain elbow', 'no pain hip']],
    ['any jaw pain or wrist swelling | no', ['no pain jaw', 'no swelling wrist']],
    ['any hip pain or dizziness | no', ['no pain hip', 'no symptoms: dizziness: no']],
    ['any pain in your left hip | nuh uh', ['no pain left hip']],
    [
      'any pain? shins no knees no left hip yes',
      ['no pain both lower-leg', 'no pain both knee', 'pain left hip'],
    ],
    ['is your neck sore? no. here? yes', ['no pain neck', 'pain neck']],
    ['any tenderness? jaw, no. neck, no', ['no tenderness jaw', 'no tenderness neck']],
  ])('takes its site and finding: %s', (talk, expected) => {
    expect(said(talk)).toEqual(expected);
  });

  it.each([
    [
      'any tenderness or swelling here on the right knee | yes',
      ['note: any tenderness or swelling here on the right knee: yes'],
    ],
    ['any pain in your neck or your hip | yes', ['note: any pain in your neck or your hip: yes']],
    ['any pain in either wrist | yes', ['note: any pain in either wrist: yes']],
    ['does your belly hurt when I press | not sure', ['note: not sure']],
    ['where does it hurt | here', ['note: where does it hurt: here']],
    ['any back pain? no. shoulder, no', ['no pain back', 'note: shoulder, no']],
  ])('settles nothing where it may mean either: %s', (talk, expected) => {
    expect(said(talk)).toEqual(expected);
  });

  it('of no one site denies a symptom in the words of the question', () => {
    expect(said('any numbness anywhere | no')).toEqual(['no symptoms: any numbness anywhere: no']);
  });

  it('says that its site, side and finding were not spoken in it', () => {
    expect(statementsOf('does your left hip hurt | yes').at(-1)?.known).toEqual({
      site: 'carried',
      side: 'carried',
      finding: 'carried',
    });
  });
});

describe('an answer to a check of a limb', () => {
  it.each([
    ['can you feel me touching your left foot | yes', ['sensation left foot']],
    ['left foot | can you feel this | no', ['no sensation left foot']],
    ['left hand | can you wiggle your fingers | yes', ['motion left hand']],
    ['right hand, can you make a fist? yes, but it hurts', ['motion right hand', 'pain right hand']],
    [
      'right foot. can you feel this? no. and the knee? yes',
      ['no sensation right foot', 'note: and the knee: yes'],
    ],
    ['right foot. feel that? yeah. and here? no', ['sensation right foot', 'no sensation right foot']],
    ['left ankle | can you squeeze my hand? yes', ['note: can you squeeze my hand: yes']],
  ])('says whether it is intact: %s', (talk, expected) => {
    expect(said(talk)).toEqual(expected);
  });

  it.each(['squeeze my fingers with your right hand', 'can you wiggle your toes'])(
    'is none where nobody answers: %s',
    (talk) => {
      expect(said(talk)).toEqual([]);
    },
  );
});

describe('an answer to a question of history or for a number', () => {
  it.each([
    ["what's your name | Orla Finch", ['name: Orla Finch']],
    ['how old are you | thirty four', ['age: thirty four years=34']],
    ['any allergies | penicillin', ['allergies: penicillin']],
    ['any allergies | no', ['no allergies: no']],
    ['any allergies? yes. bee stings', ['allergies: bee stings']],
    ['what happened | my ski caught a root and I fell', ['mechanism: my ski caught a root and I fell']],
    [
      'did you black out | no i remember all of it',
      ['no events: did you black out: no', 'events: i remember all of it'],
    ],
    [
      'did you feel dizzy before | no, I just caught an edge',
      ['no symptoms: feel dizzy before: no', 'mechanism: I just caught an edge'],
    ],
    ['he denies he lost consciousness', ['no events: he lost consciousness']],
    ['when did you last eat | about noon, some soup', ['last-intake: about noon, some soup']],
    ['how bad is the pain, nought to ten | seven', ['pain-score score=7']],
  ])('is kept under what was asked: %s', (talk, expected) => {
    expect(said(talk)).toEqual(expected);
  });
});
