// A sign is what it is now: what it was before, what only bounds it, and an answer that was not there make no reading. All talk
// here is invented.

import { describe, expect, it } from 'vitest';
import { read, statementsOf } from '../read.ts';

describe('a reading that came from another', () => {
  it.each([
    ['heart rate was ninety six, now one twelve', ['pulse rate=112']],
    ['resps went from twelve to twenty two', ['respirations rate=22']],
    [
      'pressure dropped from one thirty over eighty to ninety over fifty',
      ['blood-pressure systolic=90 diastolic=50'],
    ],
    ['pain was nine out of ten, now it is four', ['pain-score score=4']],
    ["pain's a seven", ['pain-score score=7']],
    ['pressure one eighteen over seventy by palp', ['blood-pressure systolic=118 diastolic=70']],
    ['sats coming up to ninety three', ['oxygen-saturation percent=93']],
  ])('is the one of now: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    'resps eighteen to twenty two',
    'pulse between eighty and ninety',
    'pulse over one twenty',
    'systolic below ninety',
    'sats eighty eight to ninety percent',
    'six to seven out of ten',
    'pulse twenty four in fifteen',
    'one pupil is bigger',
    'no longer shivering',
    'cap refill three to four seconds',
    'pain two at rest, seven with movement',
    'pulse one twenty before the fluids',
  ])('is none where the number is a bound or one end of a range, and the words stay: %s', (talk) => {
    expect(read(talk)).toEqual([`note: ${talk}`]);
  });

  it.each([
    ['pulse around eighty', ['pulse rate=80']],
    ['heart rate is up to one thirty', ['pulse rate=130']],
    ['resps about twenty', ['respirations rate=20']],
    ['pain six with movement', ['pain-score score=6']],
    ['pulse twenty four in fifteen, so ninety six', ['pulse rate=96']],
    ['she is tachy at one forty', ['pulse rate=140']],
    ['pupils five on the left and three on the right', ['pupils leftMm=5 rightMm=3']],
    ['pupil sluggish on the right', ['pupils rightReactive=true quality=right-sluggish']],
    ['dilated pupils', ['pupils quality=dilated']],
    ['GCS was fifteen, now it is thirteen', ['gcs total=13']],
    ['sats ninety one percent, now ninety six', ['oxygen-saturation percent=96']],
    ['SpO2 93% T 37.2', ['oxygen-saturation percent=93', 'temperature celsius=37.2']],
    ['breathing is shallow at thirty', ['respirations rate=30 quality=shallow']],
  ])('is one where a single number is said: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });
});

describe('how somebody responds', () => {
  it.each([
    ['no response to voice, groans to pain', ['responsiveness avpu=P']],
    ['unresponsive to verbal but pulls away from a pinch', ['responsiveness avpu=P']],
    ['only responds to painful stimuli', ['responsiveness avpu=P']],
    ['unresponsive to voice and pain', ['responsiveness avpu=U']],
    ['rouses to voice', ['responsiveness avpu=V']],
    ['alert to voice', ['responsiveness avpu=V']],
    ['oriented to name and place but not time', ['responsiveness orientation=2']],
    ['he is a V now', ['note: he is a V now']],
    ['unresponsive to shouting', ['note: unresponsive to shouting']],
    ['he was unresponsive when we arrived', ['events: he was unresponsive when we arrived']],
  ])('is the best of it, and none where that was not tried: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  // Teasdale G, Jennett B. Lancet 1974;2:81-84 (from memory).
  it.each([
    ['opens eyes to voice, confused, follows commands', ['gcs eye=3 verbal=4 motor=6 total=13']],
    ['eyes open to pain, groaning, withdraws from pain', ['gcs eye=2 verbal=2 motor=4 total=8']],
    ['eyes open spontaneously, obeys commands, oriented', ['gcs eye=4 verbal=5 motor=6 total=15']],
    ['does not open his eyes, no sounds, extends to pain', ['gcs eye=1 verbal=1 motor=2 total=4']],
  ])('is a coma scale by its words where all three are said: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
    expect(statementsOf(talk)[0]?.known).toEqual({ total: 'inferred', value: 'inferred' });
  });

  it('is no coma scale where two of the three are said', () => {
    expect(read('opens eyes to voice and obeys commands', 'vital')).toEqual(['responsiveness avpu=V']);
  });
});

describe('where a sign was measured', () => {
  it.each([
    ['pressure one thirty over seventy in the right arm', ['blood-pressure systolic=130 diastolic=70']],
    ['left arm BP one thirty over seventy', ['blood-pressure systolic=130 diastolic=70']],
    ['sats ninety five on the right ear, pulse eighty', ['oxygen-saturation percent=95', 'pulse rate=80']],
  ])('is no look at that place: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    ['pressure one thirty over seventy, right arm has a bruise', 'contusion right arm'],
    ['pressure one thirty over seventy right arm swollen', 'swelling right arm'],
    ['right arm swollen, pressure one thirty over seventy', 'swelling right arm'],
  ])('leaves a place of which something is said: %s', (talk, expected) => {
    expect(read(talk, 'finding')).toEqual([expected]);
  });
});

describe('skin', () => {
  it.each([
    ['sweaty, pale and cold', ['skin color=pale temperature=cold moisture=diaphoretic']],
    ['cool and pale and clammy', ['skin color=pale temperature=cool moisture=clammy']],
    ['cold and wet', ['note: cold and wet']],
  ])('is told by its own words in any order: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it('has no pain where it is said to be free of it', () => {
    expect(read('left knee | pain free now', 'finding')).toEqual([]);
  });

  it('has its pulse where that is said', () => {
    expect(read('left hand | no pulse at the neck', 'csm')).toEqual([]);
    expect(read('left hand | no pulse at the wrist', 'csm')).toEqual(['no circulation left hand']);
  });

  it('is a person’s cold and not the limb’s in mind', () => {
    expect(read('left foot | he is getting cold', 'csm')).toEqual([]);
    expect(read('left foot | it is cold', 'csm')).toEqual(['no circulation left foot warmth=cold']);
  });
});
