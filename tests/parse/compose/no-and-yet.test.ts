// Words of denial that do not deny, and denials in other words: "won't stop bleeding", "not too bad", "nothing guarding". Invented.

import { describe, expect, it } from 'vitest';
import { read, statementsOf } from '../read.ts';
import { checkStatements } from '../rows.ts';

describe('nothing, with a finding and no more', () => {
  checkStatements([
    [
      'belly now. it is soft, nothing distended.',
      ['visit abdomen', 'no rigidity abdomen', 'no distension abdomen'],
    ],
    ['left shin, nothing bleeding', ['no bleeding left lower-leg']],
    // Must not: here the "nothing" is all that is said of the first place.
    ['left knee nothing swelling on the ankle', ['no abnormality left knee', 'swelling left ankle']],
  ]);
});

describe('bleeding that stops and that does not', () => {
  checkStatements([
    ['the scalp wound has stopped bleeding', ['laceration skull', 'bleeding skull quality=controlled']],
    [
      "cut on the right hand | it won't stop bleeding",
      ['laceration right hand', 'bleeding right hand quality=active'],
    ],
    [
      "left thigh | we can't control the bleeding",
      ['visit left thigh', 'bleeding left thigh quality=active'],
    ],
    ['left thigh | not bleeding any more', ['visit left thigh', 'no bleeding left thigh']],
  ]);
});

describe('a no that is none', () => {
  checkStatements([
    [
      "right wrist, is that sore | it's not tender, not swollen",
      ['visit right wrist', 'no tenderness right wrist', 'no swelling right wrist'],
    ],
    [
      "feel your calf, tell me if it's sore. no. no. yes there.",
      ['visit lower-leg', 'note: no. no. yes there'],
    ],
    ["does the right knee hurt | it's not too bad", ['visit right knee', 'pain right knee severity=mild']],
  ]);
});

describe('a no with nothing that it answers', () => {
  checkStatements([
    ['knee — no. shin — no.', ['visit knee', 'visit lower-leg', 'note: knee — no', 'note: shin — no']],
    ['did you lock your car? no', ['note: did you lock your car: no']],
  ]);
});

describe('a denial before what is there somewhere else', () => {
  checkStatements([
    [
      'no deformity of the spine, no swelling, sore at about t nine',
      ['no deformity spine', 'no swelling spine', 'pain thoracic-spine level=T9'],
    ],
  ]);
});

describe('a pulse of the limb just named', () => {
  checkStatements([
    ['right hand: pulse present', ['visit right hand', 'circulation right hand']],
    ['right foot, pulse is weak', ['circulation right foot quality=weak']],
    ['left foot, pulse there, sensation there', ['circulation left foot', 'sensation left foot']],
    [
      'feet: right cold. left warm with a good pulse',
      [
        'visit both foot',
        'no circulation right foot warmth=cold',
        'circulation left foot warmth=warm',
        'circulation left foot',
      ],
    ],
    // Must not: with its rate it is a vital sign, and with no limb before it too.
    ['left hand. pulse is ninety', ['visit left hand', 'pulse rate=90']],
    ['pulse is weak', ['pulse quality=weak']],
  ]);
});

describe('a thing that is no place of the body', () => {
  checkStatements([
    [
      'right shin tender | no blood on his jacket',
      ['tenderness right lower-leg', 'note: no blood on his jacket'],
    ],
    // Must not: what does not run is on the body, whatever its place was called.
    [
      'right shin | bruise on the bony ridge',
      ['visit right lower-leg', 'contusion right lower-leg', 'note: on the bony ridge'],
    ],
  ]);
});

describe('the back, and the back of a place', () => {
  checkStatements([
    [
      "left wrist | there's a graze on the back of it",
      ['visit left wrist', 'abrasion left wrist part=posterior'],
    ],
    [
      'right arm fine | back no swelling no cuts',
      ['no abnormality right arm', 'no swelling back', 'no laceration back'],
    ],
  ]);
});

describe('a part of a place that was asked after', () => {
  checkStatements([
    ['left knee | does it hurt on the inside | no', ['visit left knee', 'no pain left knee part=medial']],
  ]);
});

describe('what was there and has gone', () => {
  checkStatements([
    [
      'numb right toes | the numbness in the right toes has gone',
      ['numbness right toes', 'no numbness right toes'],
    ],
  ]);
});

describe('an answer to what the patient was asked to do', () => {
  checkStatements([
    // Must not: it answers nothing that was asked before it.
    [
      'any pain in your left knee | no | can you lift your right leg | yeah',
      ['visit left knee', 'no pain left knee', 'note: can you lift your right leg: yeah'],
    ],
    [
      'any pain in the jaw | no | can you bite down | yeah',
      ['visit jaw', 'no pain jaw', 'note: can you bite down: yeah'],
    ],
    [
      "he can feel the right thumb but can't lift it",
      ['limited-motion right thumb', 'sensation right hand digit=thumb'],
    ],
    ['he can turn it a little', ['note: he can turn it a little']],
  ]);
});

describe('a bare no after a place', () => {
  checkStatements([
    ['feeling along the collarbone | no', ['visit clavicle', 'note: feeling along the collarbone: no']],
    ['feeling along the collarbone | okay', ['visit clavicle']],
  ]);
});

describe('a place called fine behind its name', () => {
  checkStatements([
    [
      'right elbow: fine. right forearm: okay',
      [
        'visit right elbow',
        'no abnormality right elbow',
        'visit right forearm',
        'no abnormality right forearm',
      ],
    ],
    ['chest nil. belly nil.', ['no abnormality chest', 'no abnormality abdomen']],
    // Must not: after a full stop an "okay" may go on to something else, and "nil" may deny what follows it.
    ['right elbow. okay. now the wrist', ['visit right elbow', 'visit right wrist']],
    ['nil tenderness of the wrist', ['no tenderness wrist']],
    ['right ankle? fine', ['visit right ankle', 'note: right ankle? fine']],
  ]);
});

describe('the rest, which is no place in mind', () => {
  checkStatements([
    [
      'tender right lower quadrant | no pain anywhere else',
      ['tenderness right lower-quadrant', 'note: no pain anywhere else'],
    ],
    [
      'spine tender at t eleven | nothing else',
      ['tenderness thoracic-spine level=T11', 'visit spine', 'note: nothing else'],
    ],
    [
      'sternum solid | both sides of the chest move the same',
      ['no instability sternum', 'visit both chest', 'note: both sides of the chest move the same'],
    ],
  ]);
});

describe('answers that turn at their end', () => {
  checkStatements([
    [
      'any pain in your belly | no here no here yes',
      ['visit abdomen', 'note: any pain in your belly: no here no here yes'],
    ],
  ]);
});

describe('words that name no place and no medication', () => {
  checkStatements([
    [
      'pelvis is stable front to back | any pain there? a little',
      ['no instability pelvis', 'pain pelvis severity=mild'],
    ],
    ['he says it hurts on the left when he takes a deep breath', ['pain left chest']],
    ['hands are like ice', ['no circulation both hand warmth=cold']],
    [
      'thighs left okay right theres a bruise on the front',
      ['no abnormality left thigh', 'contusion right thigh part=anterior'],
    ],
  ]);
});

describe('what is only queried', () => {
  checkStatements([
    ['query left ankle fracture', ['note: query left ankle fracture']],
    // Must not: what is looked for and found stays found.
    ['left ankle fracture', ['abnormality left ankle quality=fracture']],
  ]);
});

describe('a list that begins with a word for anything at all', () => {
  checkStatements([
    ['no concerns or bruising of the left elbow', ['no abnormality left elbow', 'no contusion left elbow']],
    [
      'nothing wrong or deformed at the right wrist',
      ['no abnormality right wrist', 'no deformity right wrist'],
    ],
    [
      'left knee, no problems, bruising or pain',
      ['no abnormality left knee', 'no contusion left knee', 'no pain left knee'],
    ],
    // Must not: without an "or" the list may have ended.
    ['left knee no problems, bruise on the shin', ['no abnormality left knee', 'contusion left lower-leg']],
  ]);
});

describe('a call that names nobody', () => {
  checkStatements([
    ['ambulance called eleven forty', ['note: ambulance called eleven forty']],
    ['she is called Runa Falk', ['name: Runa Falk']],
  ]);
});

describe('a "not" with a verb of its own', () => {
  checkStatements([
    [
      'the probe will not read, fingers cold',
      ['no circulation hand warmth=cold', 'note: the probe will not read'],
    ],
    [
      'he does not want that touched, left knee swollen',
      ['swelling left knee', 'note: he does not want that touched'],
    ],
    // Must not: what the words lead to is still to come.
    ['i do not see any, bruising of the left hip', ['no contusion left hip']],
  ]);
});

describe('a list of adjectives after a "not"', () => {
  checkStatements([
    [
      'right elbow is not bruised, swollen or sore',
      ['no contusion right elbow', 'no swelling right elbow', 'no pain right elbow'],
    ],
    // Must not: without an "or" it begins something stated.
    ['right elbow not bruised, sore', ['no contusion right elbow', 'pain right elbow']],
  ]);
});

describe('a thing that is broken', () => {
  checkStatements([
    ['right wrist sore | sunglasses bent', ['pain right wrist', 'note: sunglasses bent']],
    // Must not: a word for how is no thing.
    [
      'right wrist sore | clearly broken',
      ['pain right wrist', 'abnormality right wrist quality=fracture', 'note: clearly'],
    ],
  ]);
});

describe('a row of noes and then something', () => {
  checkStatements([
    ['ribs, no, no, no, quite tender there', ['tenderness ribs']],
    // Must not: a noun straight after them is denied.
    ['right hip | no no no swelling', ['visit right hip', 'no swelling right hip']],
  ]);
});

describe('what is normal and no place in mind', () => {
  checkStatements([
    ['left arm | skin normal', ['visit left arm', 'note: skin normal']],
    [
      'bp one ten over seventy, right arm, seated',
      ['blood-pressure systolic=110 diastolic=70', 'note: seated'],
    ],
    // Must not: what is said of the arm makes it a place looked at.
    [
      'bp one ten over seventy, right arm bruised',
      ['blood-pressure systolic=110 diastolic=70', 'contusion right arm'],
    ],
  ]);
});

describe('a side between the no and what it denies', () => {
  checkStatements([
    ['neck clear, no midline pain', ['no abnormality neck', 'no pain midline neck']],
    ['no right sided swelling of the abdomen', ['no swelling right abdomen']],
    ['spine, no midline bony tenderness', ['no tenderness midline spine']],
    // Must not: a side that is taken back denies nothing of the other.
    ['not the left, the right knee is swollen', ['swelling right knee', 'note: not the left']],
  ]);
});

describe('what is measured or counted after a denial, which is there', () => {
  checkStatements([
    [
      'right calf | no bruising, graze five cm',
      ['visit right lower-leg', 'no contusion right lower-leg', 'abrasion right lower-leg size=5+cm'],
    ],
    [
      'no crepitus four centimetre cut on the left hip',
      ['no crepitus left hip', 'laceration left hip size=4+cm'],
    ],
    [
      'no swelling, two blisters on the left heel',
      ['no swelling left heel', 'abnormality left heel count=2 quality=blister'],
    ],
    [
      'denies pain, bruise six centimetres across the right thigh',
      ['no pain right thigh', 'contusion right thigh size=6+cm'],
    ],
    // Must not: a list that goes on with "or", and a size that is the first finding's.
    ['no bruising or laceration of the left hip', ['no contusion left hip', 'no laceration left hip']],
    [
      'bruise six centimetres on the left hip, no laceration',
      ['contusion left hip size=6+cm', 'no laceration left hip'],
    ],
  ]);
});

describe('a little of something, or something large, after a denial', () => {
  checkStatements([
    [
      'flank: no swelling, mild soreness on the right side',
      ['visit flank', 'no swelling right flank', 'pain right flank severity=mild'],
    ],
    [
      'no weakness, numb a bit over the left thumb',
      ['no weakness left thumb', 'numbness left thumb severity=mild'],
    ],
    ['back not tender, tiny scrape', ['no tenderness back', 'abrasion back severity=mild']],
    ['no deformity, large graze on the left hip', ['no deformity left hip', 'abrasion left hip']],
    [
      'no numbness, bit of weakness in the right hand',
      ['no numbness right hand', 'weakness right hand severity=mild'],
    ],
    // Must not: a list that goes on with "or", and what is called small in the denial itself.
    [
      'no pain, bruising or slight swelling of the calf',
      ['no pain lower-leg', 'no contusion lower-leg', 'no swelling lower-leg severity=mild'],
    ],
    ['no mild swelling of the calf', ['no swelling lower-leg severity=mild']],
  ]);

  it.each([
    ['no cuts, bruise on the left hip', 2],
    ['no bruising, bad pain in the left hip', 2],
    // Must not: a list of three, and one that is closed by its "of".
    ['no cuts, burns, bruises on the left hip', 0],
    ['no cuts, bruising of the left hip', 0],
  ])('asks where both can be meant: %s', (talk, asked) => {
    const doubts = statementsOf(talk).flatMap((one, i) => (one.doubt.length > 0 ? [i + 1] : []));
    expect(doubts).toEqual(asked === 0 ? [] : [asked]);
  });
});

describe('what hurts on a condition', () => {
  checkStatements([
    ['elbow: no tenderness until I squeeze', ['visit elbow', 'note: no tenderness until I squeeze']],
    ['no pain in the left hip unless she sits up', ['note: no pain in the left hip unless she sits up']],
    ['left calf, no cramp at rest', ['note: left calf, no cramp at rest']],
    ['left shin sore, but only when he walks', ['pain left lower-leg']],
  ]);

  it('is there where a movement cannot be made without it', () => {
    expect(read("can't lift the right arm without pain")).toContain('pain right arm');
  });
});

describe('nothing, and where', () => {
  checkStatements([
    ['shoulders, nothing on the left', ['no abnormality left shoulder']],
    ['thighs, nothing on the left. right is sore', ['no abnormality left thigh', 'pain right thigh']],
    // Must not: no answer from a limb is no finding of a sound one.
    ['feet, nothing from the left', ['visit both foot', 'note: nothing from the left']],
    ['nothing from the nose', ['no abnormality nose']],
  ]);
});

describe('a pelvis that moves, and one that does not', () => {
  checkStatements([
    ['the pelvis gives a little', ['instability pelvis']],
    ['pelvis moves when I squeeze', ['instability pelvis']],
    ['pelvis does not move, no pain', ['no instability pelvis', 'no pain pelvis']],
    ["pelvis won't budge when I rock it", ['visit pelvis', "note: pelvis won't budge when I rock it"]],
    // Must not: a hip is there to be moved.
    ['left hip does not move', ['limited-motion left hip']],
    ['left hip moves fine', ['no limited-motion left hip']],
  ]);
});

describe('what is said of a place in small words, beside something else', () => {
  checkStatements([
    [
      "right shoulder's out, skin intact",
      ['visit right shoulder', "note: right shoulder's out, skin intact"],
    ],
  ]);
});

describe('what somebody does who was asked to', () => {
  checkStatements([
    ['can push down with the right foot', ['motion right foot']],
    ['pulls up with both feet', ['motion both foot']],
    ['he grips my hand with the left', ['motion left hand']],
    ["can't make a fist with the right hand", ['no motion right hand']],
    ['no squeeze in the right hand', ['no motion right hand']],
    [
      'can squeeze with the right hand, not with the left because of pain',
      ['motion right hand', 'no motion left hand', 'note: because of pain'],
    ],
    ['he can raise the left arm', ['no limited-motion left arm']],
    // Must not: what is done a little of, what is asked for, and what the examiner does.
    ['he can raise the left arm a little', ['visit left arm', 'note: he can raise the left arm a little']],
    ['can you raise the left arm', []],
    ['pushing down on the belly, no pain', ['no pain abdomen']],
    ['hands | can he feel this? yes, all of them', ['visit both hand', 'sensation both hand']],
  ]);
});

describe('a limb that warms by itself', () => {
  checkStatements([
    ['left foot is warming up', ['visit left foot', 'note: left foot is warming up']],
    // Must not: somebody warms it.
    ['warming up his feet', ['warming both foot']],
  ]);
});

describe('none of', () => {
  checkStatements([
    ['none of the toes are swollen', ['no swelling toes']],
    ['none of his ribs hurt', ['no pain ribs']],
    ['no part of the left shin is tender', ['no tenderness left lower-leg']],
    ['none of the toes hurt, heel sore', ['no pain toes', 'pain heel']],
    ['nothing on the right shoulder is sore', ['no pain right shoulder']],
    // Must not: what only bounds a place is no place.
    ['everything below the waist is fine', ['visit abdomen', 'note: everything below the waist is fine']],
  ]);

  it('says of a limb that is not cold no more than that', () => {
    expect(read("left foot isn't cold")).toEqual(['circulation left foot']);
  });
});

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
