// Of which side, place and person something is said, and what is kept where nobody can tell. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { corrections, statementsOf } from '../read.ts';
import { checkStatements } from '../rows.ts';

describe('one side after the other', () => {
  checkStatements([
    ['left ankle fine, sore on the right', ['no abnormality left ankle', 'pain right ankle']],
    ['right ear clear, blood on the left', ['no abnormality right ear', 'bleeding left ear']],
    ['left elbow no pain, pain on the right', ['no pain left elbow', 'pain right elbow']],
    ['nothing on the left knee, swollen on the right', ['no abnormality left knee', 'swelling right knee']],
    ['jaw pushed over to the left, some bruising', ['contusion jaw', 'note: pushed over to the left']],
    // Must not: a part of the same one.
    ['left ankle fine, sore on the outside', ['pain left ankle part=lateral']],
  ]);

  it('asks of a side that may be a part of the limb', () => {
    const asked = statementsOf('left calf bruised, graze on the right side').map(({ doubt }) => doubt.length);
    expect(asked).toEqual([0, 1]);
  });
});

describe('the rest, which nobody named', () => {
  checkStatements([
    ['everything else is fine', ['note: everything else is fine']],
    ['left arm fine, rest okay', ['no abnormality left arm', 'note: rest okay']],
    // Must not: a question, and plain talk.
    ['anything else hurt?', []],
    ['okay, fine', []],
  ]);
});

describe('what looked so and is not', () => {
  checkStatements([
    [
      "the left wrist looks bent but it isn't",
      ['visit left wrist', "note: the left wrist looks bent but it isn't"],
    ],
    ["right knee was swollen but isn't now", ['visit right knee', "note: right knee was swollen but isn't"]],
    // Must not: something else is denied.
    ["right knee is swollen but it isn't bruised", ['swelling right knee', 'no contusion right knee']],
  ]);
});

describe('care that is taken off again', () => {
  checkStatements([
    ['splint on the left arm | had to take that off', ['splint left arm', 'note: had to take that off']],
    ['splint on the left arm | put it back on', ['splint left arm', 'note: put it back on']],
  ]);
});

describe('a place that a new clause leads to', () => {
  checkStatements([
    [
      'pressing on the breastbone causes pain in the back',
      ['pain back', 'visit sternum', 'note: pressing on the breastbone causes'],
    ],
    ["left hip is low and there's bruising in the groin", ['contusion groin', 'visit left hip']],
    [
      'right shoulder is low, lump at the end of the collarbone',
      ['swelling right clavicle', 'visit right shoulder', 'note: right shoulder is low'],
    ],
  ]);
});

describe('whose side and whose place', () => {
  checkStatements([
    [
      'she pointed at the right ankle but I found swelling on the left',
      ['swelling left ankle', 'note: she pointed'],
    ],
    ['soreness on the right, graze on the left side of the ribs', ['pain right ribs', 'abrasion left ribs']],
    ['cut on the left ear and right eye bruised', ['laceration left ear', 'contusion right eye']],
    ["right foot moves, left foot doesn't", ['motion right foot', 'no motion left foot']],
    ['left the groin alone', ['note: left the groin alone']],
    [
      'left hand: pale, cold, no pulse',
      ['visit left hand', 'no circulation left hand warmth=cold quality=pale', 'no circulation left hand'],
    ],
    // Must not: one place that two findings share.
    ['cut on the left ear and the left cheek', ['laceration left ear', 'laceration left cheek']],
  ]);

  it('asks where no pause says which side is meant', () => {
    expect(statementsOf('left calf pain on the right').map(({ doubt }) => doubt.length)).toEqual([1, 0]);
  });
});

describe('care that was not given', () => {
  checkStatements([
    ['collar was not needed', ['note: collar was not needed']],
    ['vacuum mattress not available', ['note: vacuum mattress not available']],
    // Must not: it is on, and something else is denied.
    ['collar on, not too tight', ['collar', 'note: not too tight']],
  ]);
});

describe('what is told in words that say nothing one by one', () => {
  checkStatements([
    ["she's a bit better than before", ["note: she's a bit better than before"]],
    ["he won't let me near it", ["note: he won't let me near it"]],
    ['both elbows move', ['visit both elbow', 'note: both elbows move']],
    ['knees bend fine', ['no limited-motion both knee']],
    // Must not: courtesy.
    ["it's okay", []],
    ["he's fine", []],
  ]);
});

describe('stings and blisters', () => {
  checkStatements([
    ['wasp stings make his face swell', ['allergies: wasp stings make his face swell']],
    ['wasp sting on the neck', ['sting neck']],
    ['left heel blistered', ['abnormality left heel quality=blister']],
  ]);
});

describe('what has gone again', () => {
  checkStatements([
    ['numbness in the left hand, gone now', ['no numbness left hand']],
    ['pins and needles gone in the right foot', ['no tingling right foot']],
    // Must not: it went down, it stopped, and something else has gone.
    ['swelling of the knee, gone down', ['swelling knee', 'note: gone down']],
    ['bleeding from the left ear, stopped now', ['bleeding left ear', 'note: stopped now']],
    ['graze on the chin and it has gone grey', ['abrasion jaw', 'discoloration jaw quality=grey']],
  ]);
});

describe('degrees', () => {
  checkStatements([
    ['thirty seven degrees', ['temperature celsius=37']],
    // Must not: an angle.
    ['knee stuck at ninety degrees', ['visit knee', 'note: knee stuck at ninety degrees']],
    ['left foot twisted, forty degrees', ['deformity left foot', 'note: forty degrees']],
  ]);
});

describe('on a thing, and on a drug', () => {
  checkStatements([
    ['she is on a ledge', ['note: she is on a ledge']],
    ['he is on a new blood pressure tablet', ['medications: a new blood pressure tablet']],
  ]);
});

describe('how far it goes, and of both which', () => {
  checkStatements([
    ['left arm numb from the elbow down', ['numbness left arm', 'note: from the elbow down']],
    [
      'hips: left flexed and turned in',
      ['visit both hip', 'deformity left hip quality=rotated', 'note: flexed'],
    ],
  ]);
});

describe('a limb check without a pause', () => {
  checkStatements([
    [
      "moves her fingers on the right can't move them on the left",
      ['motion right hand', 'no motion left hand'],
    ],
    ['the left hip, not the right, is tender', ['tenderness left hip', 'note: not the right']],
    ['the left hip not the right is tender', ['tenderness left hip', 'note: not the right is']],
    ['numb down the right arm, tingling in the left', ['numbness right arm', 'tingling left arm']],
    ['pain in the left hip and swelling in the right', ['pain left hip', 'swelling right hip']],
  ]);
});

describe('one of two', () => {
  checkStatements([
    ['one of her shins is bruised', ['contusion lower-leg']],
    ['graze on one of the elbows, the right', ['abrasion right elbow']],
    ['her shins are bruised', ['contusion both lower-leg']],
  ]);
});

describe('a finger of the hand that was just named', () => {
  checkStatements([
    [
      'right hand index finger cut, left hand thumb sore',
      ['laceration right index-finger', 'visit right hand', 'pain left thumb', 'visit left hand'],
    ],
    [
      'right foot little toe bent left foot big toe bruised',
      ['deformity right little-toe', 'visit right foot', 'contusion left big-toe', 'visit left foot'],
    ],
    // Must not: the hand that is led to holds it.
    ['fingers numb on the right hand', ['numbness right fingers', 'visit right hand']],
  ]);
});

describe('elsewhere', () => {
  checkStatements([
    ['pain in the back, none elsewhere', ['pain back', 'note: none elsewhere']],
    ['sore left lower belly soft elsewhere', ['pain left abdomen part=lower', 'note: soft elsewhere']],
    ['belly no tenderness one graze over the hip', ['no tenderness abdomen', 'abrasion hip count=1']],
  ]);
});

describe('what an exception leaves out', () => {
  checkStatements([
    ['both ankles fine except the right', ['no abnormality left ankle', 'note: except the right']],
    [
      'all four quadrants soft apart from the right upper',
      [
        'no rigidity left upper-quadrant',
        'no rigidity both lower-quadrant',
        'note: apart from the right upper',
      ],
    ],
    [
      'right upper quadrant tender, the other three soft',
      ['tenderness right upper-quadrant', 'note: the other three soft'],
    ],
    // Must not: what is denied is there at what is left out.
    ['neither ankle swollen except the right', ['no swelling both ankle', 'swelling right ankle']],
  ]);
});

describe('the other one too', () => {
  checkStatements([
    ['left wrist sore, right wrist also', ['pain left wrist', 'pain right wrist']],
    ['left wrist sore, same on the right', ['pain left wrist', 'pain right wrist']],
    ['left wrist sore and so is the right', ['pain left wrist', 'pain right wrist']],
    ['swollen left wrist, normal right', ['swelling left wrist', 'no abnormality right wrist']],
    ['pain over the right kidney, none over the left', ['pain right flank', 'no pain left flank']],
    [
      'inner side of the left calf sore outer side fine',
      ['pain left lower-leg part=medial', 'note: outer side fine'],
    ],
  ]);
});

describe('which side, asked and answered in a word', () => {
  it.each([
    'wrist is sore. left or right? right',
    'wrist is sore | right or left? | right',
    'wrist is sore. which side? right',
  ])('is the side of what was said: %s', (talk) => {
    expect(corrections(talk).join()).toContain('right');
  });

  it('is no side where nothing of the kind was asked', () => {
    expect(corrections('wrist is sore. is that new? right')).toEqual([]);
  });

  checkStatements([['knee. does it hurt? bit', ['visit knee', 'pain knee severity=mild']]]);
});

describe('the other one, and what is free of it', () => {
  checkStatements([
    ['a cut on the right, other ear fine', ['no abnormality left ear', 'note: a cut on the right']],
    [
      'ache in the right arm, none in the chest',
      ['pain right arm', 'visit chest', 'note: none in the chest'],
    ],
    [
      'ankles: none swollen, graze on the left',
      ['visit both ankle', 'no swelling left ankle', 'abrasion left ankle'],
    ],
    [
      'neck: sore, no midline tenderness, hurts on the right',
      ['visit neck', 'pain neck', 'no tenderness midline neck', 'pain right neck'],
    ],
    [
      'no other injuries, old tattoo right hip',
      ['visit right hip', 'note: no other injuries, old tattoo right hip'],
    ],
    // Must not: the same place on the other side.
    ['ache in the right arm, none in the left', ['pain right arm', 'no pain left arm']],
  ]);
});

describe('none behind a colon', () => {
  checkStatements([
    ['deformity of the right hip: none', ['no deformity right hip']],
    [
      'left hip. bruising — none. swelling: slight',
      ['visit left hip', 'no contusion left hip', 'swelling left hip', 'note: slight'],
    ],
    ['no teeth missing', ['no missing-teeth teeth']],
    // Must not: a place alone has nothing that it denies.
    ['left hip: none', ['visit left hip', 'note: left hip: none']],
  ]);
});

describe('a place that is only part of another thing’s name', () => {
  checkStatements([
    ['her ear stud is missing', ['note: her ear stud is missing']],
    ['the shin guard was cracked', ['note: the shin guard was cracked']],
    ['the toe of the crampon is bent', ['note: the toe of the crampon is bent']],
    ['the mouth of the gully is icy', ['note: the mouth of the gully is icy']],
    // Must not: a body's own.
    ['the back of the head is cut', ['laceration head part=posterior']],
    ['left foot is warming up', ['visit left foot', 'note: left foot is warming up']],
    ["there's a zorble on his left knee", ['visit left knee', "note: there's a zorble on his left knee"]],
  ]);
});

describe('a side that is not carried so far', () => {
  checkStatements([
    [
      'left clavicle sore | any pins and needles in your fingers | yes',
      ['pain left clavicle', 'visit fingers', 'tingling fingers'],
    ],
    ['left hip sore | any numbness in your toes | no', ['pain left hip', 'visit toes', 'no numbness toes']],
    // Must not: along the limb itself, where the side is pointed at, and what the examiner checks.
    [
      'left elbow sore | any pins and needles in your fingers | yes',
      ['pain left elbow', 'visit left fingers', 'tingling left fingers'],
    ],
    [
      'left clavicle sore | any pins and needles in your fingers on that side | yes',
      ['pain left clavicle', 'visit left fingers', 'tingling left fingers'],
    ],
    ['left clavicle sore | radial pulse good', ['pain left clavicle', 'circulation left hand pulse=radial']],
  ]);
});

describe('a region that is another place on a side', () => {
  checkStatements([
    ['bruise over the left lumbar region', ['contusion left flank']],
    ['sore in the lumbar area on the left', ['pain left flank']],
    ['lumbar region, swelling on the left', ['swelling left flank']],
    ['left renal angle tender', ['tenderness left flank']],
    // Must not: the spine itself, and the lower back.
    ['lumbar region tender', ['tenderness lumbar-spine']],
    ['left side of the lower back grazed', ['abrasion left back part=lower']],
  ]);
});
