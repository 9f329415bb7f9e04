// Talk as it is heard, without commas and question marks: what answers, what takes back and what a word means must be told by the
// words alone.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a question and what answers it in one breath', () => {
  checkStatements([
    ['tender anywhere on the shin nope', ['no tenderness lower-leg']],
    ['no tenderness anywhere on the shin', ['no tenderness lower-leg']],
    ['hurts anywhere I touch', ['note: hurts anywhere I touch']],
    ['double vision nah', ['no symptoms: double vision: nah']],
    ['nausea no only thirsty', ['no symptoms: nausea: no', 'symptoms: thirsty']],
    ['on any tablets only a water pill', ['medications: a water pill']],
    ['when did it come on yesterday after the climb', ['onset: yesterday after the climb']],
    ['how bad is the pain out of ten probably a four', ['pain-score score=4']],
    ['how bad is the pain one to ten', []],
    ['can you squeeze my fingers nice strong grip', ['motion hand strength=strong']],
    ['anything on the shin only a graze', ['abrasion lower-leg', 'visit lower-leg']],
    ['does your hip hurt just below the bone', ['visit hip']],
    ['does your hip hurt only at night', ['visit hip']],
  ]);
});

describe('what is denied, over or taken back', () => {
  checkStatements([
    ['elbow bent and bleeding stopped', ['bleeding elbow quality=controlled', 'note: bent']],
    ['knee twisted and pain stopped', ['deformity knee', 'no pain knee']],
    [
      'no reading on the probe toes too cold',
      ['no circulation foot warmth=cold', 'note: no reading on the probe'],
    ],
    ['no cold toes', ['circulation foot']],
    ['wrist bruised no that is only dirt', ['visit wrist', 'note: wrist bruised no that is only dirt']],
    [
      'toes all wiggle except the big one on the right',
      ['visit toes', 'note: toes all wiggle except the big one on the right'],
    ],
    ['neck nothing sore skull to shoulder', ['no pain skull', 'visit neck', 'visit shoulder']],
    [
      'hip catches when he raises the leg',
      ['visit hip', 'visit leg', 'note: hip catches when he raises the leg'],
    ],
    ['he will have a sore hip', ['note: he will have a sore hip']],
    ['no old breaks in that ankle', ['note: no old breaks in that ankle']],
    [
      "don't lift it strapped across the shin",
      ['visit lower-leg', "note: don't lift it strapped across the shin"],
    ],
    ['no open sore on the heel', ['note: no open sore on the heel']],
  ]);
});

describe('words for a place, a side, care or a number that are none', () => {
  checkStatements([
    ['camp is at nine thousand feet', ['note: camp is at nine thousand feet']],
    ['two feet pink', ['circulation both foot quality=pink', 'note: two']],
    ['we left the wire in his calf', ['impaled-object lower-leg']],
    ['burnt shin from the ice', ['burn lower-leg', 'note: from the ice']],
    ['ice on the right wrist', ['cooling right wrist']],
    ['chin tender hit the end of a pole', ['mechanism: hit the end of a pole', 'tenderness jaw']],
    ['right pupil four left one sluggish', ['pupils leftReactive=true rightMm=4 quality=left-sluggish']],
    ['pupils left one right four', ['pupils leftMm=1 rightMm=4']],
    ['fingers nine of ten pink', ['circulation hand quality=pink', 'note: nine of ten']],
    ['a rash going down the arm', ['rash arm']],
    ['not a scratch on his shin', ['no abnormality lower-leg']],
    ['going to give your hip a squeeze', ['visit hip']],
    ['neck of the couloir', []],
    ['follow my finger', []],
    [
      'the glove came off his thumb is white',
      ['discoloration thumb quality=white', 'note: the glove came off his'],
    ],
    ['knee fine even when I push', ['no abnormality knee']],
    ['stump bites fine', ['note: stump bites fine']],
  ]);
});

describe('plain words that were kept as said', () => {
  checkStatements([
    ['right foot is pointing the wrong way', ['deformity right foot']],
    ['patella sits off to the side', ['deformity knee']],
    ['forearm bends where it should not', ['deformity forearm']],
    ['sats have drifted to ninety one', ['oxygen-saturation percent=91']],
    ['pain has been easing down to a four', ['pain-score score=4']],
    ['chest rise the same both sides', ['no asymmetry both chest']],
    ['no loss of consciousness per the guide', ['no events: no loss of consciousness']],
    ['tourniquet high on the right arm nine oh four', ['tourniquet right arm']],
    ['no change since the splint', ['note: no change since the splint']],
    ['none of that on this leg', ['note: none of that on this leg']],
  ]);
});
