// Care is stated where it was given; a plan, a thing at hand and a denial are none, and their words are kept. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read, statementsOf } from '../read.ts';

describe('care', () => {
  it.each([
    ['tourniquet on the left thigh', ['tourniquet left thigh']],
    ['bandaged the left hand', ['bandage left hand']],
    ['direct pressure to the scalp', ['direct-pressure skull']],
    ['packed the wound on the right thigh with gauze', ['wound-packing right thigh']],
    ['sling and swathe on the left arm', ['sling left arm']],
    ['collar is on', ['collar']],
    ['blanket on for warming', ['warming']],
    ['oxygen at four litres a minute', ['oxygen text=oxygen at four litres a minute']],
    ['gave a hundred of fentanyl', ['medication text=a hundred of fentanyl']],
    ['fifteen litres on a non rebreather', ['oxygen text=fifteen litres on a non rebreather']],
    ['hung a litre of warm saline', ['fluids text=hung a litre of warm saline']],
    ['he is on ten litres by mask', ['oxygen text=he is on ten litres by mask']],
    ['hydrocortisone one hundred IV', ['medication text=hydrocortisone one hundred IV']],
    ['used his EpiPen', ['medication text=his EpiPen']],
    ['burn dressings on both hands', ['dressing both hand']],
    ['tourniquet high and tight on the left thigh', ['tourniquet left thigh']],
    ['chest seal on the left', ['chest-seal left chest']],
    ['tourniquet time on the right arm is fourteen oh one', ['tourniquet right arm']],
    ['reduced the right ankle', ['reduction right ankle']],
    ['gave her sweet tea', ['fluids']],
    ['two units of packed red cells running', ['medication text=two units of packed red cells running']],
    ['pushed fifty micrograms of sufentanil', ['medication text=fifty micrograms of sufentanil']],
    ['second dose of ketamine given', ['medication text=second dose of ketamine given']],
    ['right ankle splinted with a pillow', ['splint right ankle']],
    ['oxygen on, twelve litres by face mask', ['oxygen text=oxygen on, twelve litres by face mask']],
    ['oxygen at eight through a venturi mask', ['oxygen text=oxygen at eight through a venturi mask']],
    ['one spray of GTN under her tongue', ['medication text=one spray of GTN under her tongue']],
    ['half a gram of paracetamol by mouth', ['medication text=half a gram of paracetamol by mouth']],
    ['a cat high and tight on the left thigh', ['tourniquet left thigh']],
    ['burn flushed with two litres of water', ['irrigation text=burn flushed with two litres of water']],
    ['gave her a mug of hot sweet tea', ['fluids']],
    ['head is being held', ['spine-protection']],
    ['gave four hundred milligrams of ibuprofen', ['medication text=four hundred milligrams of ibuprofen']],
  ])('is stated where it was given: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    'tourniquet',
    'no tourniquet',
    "we'll need a collar",
    "I'm going to put a tourniquet on your leg",
    'he is splinting',
    'nobody gave her any pain relief',
    "don't give him penicillin he's allergic",
  ])('is none where it was not, and the words stay: %s', (talk) => {
    expect(read(talk)).toEqual([`note: ${talk}`]);
  });

  it.each([
    'pass me the tourniquet',
    'if it bleeds again we will use a tourniquet',
    'left thigh still oozing around the packing',
    'bleeding through the dressing on his arm',
    'tender under the splint',
    'no pain meds given yet',
    'converted the tourniquet',
    'retightened the tourniquet at fourteen oh one',
    'burped the chest seal at fourteen oh one',
    'cat scratch on the left forearm',
    'after the splint cap refill is two seconds in the left foot',
  ])('is none where it is only spoken of: %s', (talk) => {
    expect(read(talk, 'care')).toEqual([]);
  });

  it.each([
    ['swelling of the left foot, splint on the left lower leg', 'splint left lower-leg'],
    ['left forearm bleeding, tourniquet on the left upper arm', 'tourniquet left upper-arm'],
    ['left wrist deformed, splint on the left forearm', 'splint left forearm'],
    ['amputation of the left foot at the ankle, tourniquet on left lower leg', 'tourniquet left lower-leg'],
    ['left wrist deformed, splint on', 'splint left wrist'],
    ['left wrist splint on, right knee bruised', 'splint left wrist'],
    ['gave fifty micrograms of fentanyl, left wrist swollen', 'medication text=fifty micrograms of fentanyl'],
  ])('is at the place that its "on" leads to: %s', (talk, expected) => {
    expect(read(talk, 'care')).toEqual([expected]);
  });
});

describe('care that was ended', () => {
  it.each([
    'released the tourniquet on the left thigh at fourteen forty',
    'loosened the bandage on the right hand',
    'tourniquet off the left arm',
    'took the splint off his leg',
    'collar off',
    'took him off the oxygen at fourteen oh one',
    'tourniquet swapped for a bandage at fourteen oh one',
    'tourniquet converted to a dressing',
    "didn't give any oxygen",
  ])('is kept as said, and is no care given: %s', (talk) => {
    expect(read(talk)).toEqual([`note: ${talk}`]);
  });
});

describe('care that was there before', () => {
  it.each([
    ['she had a splint on when we arrived', ['splint text=on when we arrived']],
    ['a friend gave her two aspirin before we got here', ['medication text=two aspirin before we got here']],
  ])('keeps the words that say so, and when it was is asked: %s', (talk, expected) => {
    expect(read(talk, 'care')).toEqual(expected);
    expect(statementsOf(talk).find(({ statement }) => statement.kind === 'care')?.doubt).toEqual([
      'That was before now: when?',
    ]);
  });

  it('asks nothing where its time was said', () => {
    const [only] = statementsOf('tourniquet on the left thigh by bystanders at thirteen fifty');
    expect(only?.doubt).toEqual([]);
  });
});

describe('one care at several places', () => {
  it('has the time that was said with each', () => {
    const talk = 'tourniquets on, left arm at thirteen fifty and left leg at thirteen fifty six';
    expect(read(talk)).toEqual(['tourniquet left arm', 'tourniquet left leg']);
    const times = statementsOf(talk).map(({ at }) => at ?? 0);
    expect((times[1] ?? 0) - (times[0] ?? 0)).toBe(6 * 60_000);
  });

  it('is not at a place that was said with no time after it', () => {
    expect(read('tourniquet on the left arm at thirteen fifty, left leg bruised', 'care')).toEqual([
      'tourniquet left arm',
    ]);
  });
});
