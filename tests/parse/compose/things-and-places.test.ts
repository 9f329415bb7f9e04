// Words for places that name none, findings that are said of things, and what was taken back or answered in one breath. All talk here is invented.

import { describe } from 'vitest';
import { checkCorrections, checkStatements } from '../rows.ts';

describe('a place that only measures, works or lies in the land', () => {
  checkStatements([
    ['fist sized bruise on the right hip', ['contusion right hip', 'note: fist sized']],
    ['thumb shaped bruises on both upper arms', ['contusion both upper-arm', 'note: thumb shaped']],
    ['both hands flat on the belly', ['visit abdomen']],
    ['both hands are bruised', ['contusion both hand']],
    ['somebody face the wall and hold it', ['note: somebody face the wall and hold it']],
    ['the elbow in the stream is deep', ['note: the elbow in the stream is deep']],
    ['swelling on the elbow in the left arm', ['swelling left elbow']],
  ]);
});

describe('a finding that is said of a thing', () => {
  checkStatements([
    ['rigid stretcher under the left leg', ['visit left leg', 'note: rigid stretcher under the left leg']],
    [
      'left shoulder hangs like a broken branch',
      ['visit left shoulder', 'note: left shoulder hangs like a broken branch'],
    ],
    ['feels like a broken rib on the right', ['abnormality right ribs quality=fracture']],
    ['a twig is impaled in the right calf', ['impaled-object right lower-leg', 'note: a twig is']],
    ['foot is cold beyond the break', ['no circulation foot warmth=cold', 'note: beyond the break']],
    [
      'the oximeter is not picking up and his fingers are cold',
      ['no circulation hand warmth=cold', 'note: the oximeter is not picking up'],
    ],
    [
      'right shin tolerates firm pressure',
      ['visit right lower-leg', 'note: right shin tolerates firm pressure'],
    ],
    ['holding firm pressure on the right shin', ['direct-pressure right lower-leg']],
    ["right kneecap's off to the side", ['deformity right knee quality=dislocation']],
    ['back not a scratch on it', ['no abnormality back']],
    ['a mark over the right hip', ['visit right hip', 'note: a mark over the right hip']],
  ]);
});

describe('whose side and whose place', () => {
  checkStatements([
    ["right hand is fine and the left one's still numb", ['no abnormality right hand', 'numbness left hand']],
    ['the right one is sore and the left wrist is fine', ['pain right wrist', 'no abnormality left wrist']],
    ['heel is grazed and so is the left elbow', ['abrasion heel', 'abrasion left elbow']],
    [
      'scalp is grazed, chin the same forehead',
      ['abrasion skull', 'visit jaw', 'abrasion jaw', 'visit forehead'],
    ],
    ['the rash is fading and he says his right foot hurts', ['pain right foot', 'note: the rash is fading']],
    ['right hand is the cold one', ['no circulation right hand warmth=cold']],
    ['the right calf is what hurts', ['pain right lower-leg']],
    ['calves are the same size and no cuts', ['no laceration both lower-leg', 'note: are the same size']],
    ['sensation fine over the collarbone', ['visit clavicle', 'note: sensation fine over the collarbone']],
  ]);
});

describe('what was taken back in the breath it was said in', () => {
  checkCorrections([
    ['respirations eighteen no twenty eight', ['number value=28 ← last']],
    ['heart rate one ten no one thirty', ['number value=130 ← last']],
    ['cut right hip scratch that left hip', ['site site=hip side=left ← last']],
    ['graze right shin | left hand no scratch that left foot is numb', []],
    [
      'bruise of the outer wrist pardon me the inner wrist',
      ['statement contusion wrist part=medial ← kind=finding finding=contusion site=wrist'],
    ],
    ['excuse me can I see your right hand', []],
  ]);
  checkStatements([
    ['right arm scratch that right leg is numb', ['note: right arm', 'numbness right leg']],
    ['feels nothing when I scratch the right sole', ['no sensation right foot']],
  ]);
});

describe('an answer in the breath of its question', () => {
  checkStatements([
    ['does your hip hurt only when I cough', ['visit hip', 'note: does your hip hurt only when I cough']],
    ['did it click he heard a snap', ['note: did it click he heard a snap']],
    ['how bad is it from one to ten four', ['pain-score score=4']],
    ['any allergies just peanuts', ['allergies: peanuts']],
    [
      'can you feel this no what about this yes',
      ['note: can you feel this: no', 'note: what about this: yes'],
    ],
    ['any allergies just asking', ['note: any allergies just asking']],
    ['can you straighten the knee not fully', ['note: can you straighten the knee: not fully']],
    ['are you seeing double only at the sides', ['note: are you seeing double only at the sides']],
    ['where does it hurt top of the left shoulder', ['pain left shoulder part=upper']],
    ['where does it hurt on your left leg', ['visit left leg']],
    ['worse than earlier on', ['note: worse than earlier on']],
  ]);
});

describe('what happened, what is worn and what is only asked', () => {
  checkStatements([
    ['kicked in the shin by a pony', ['mechanism: kicked in the shin by a pony']],
    ['took a knee to the face', ['mechanism: took a knee to the face']],
    ['knee to the chest hurts', ['pain chest', 'visit knee']],
    ['nail torn off the right big toe', ['avulsion right big-toe']],
    ['right eye is bloodshot', ['discoloration right eye quality=red']],
    ['the eye is flushed out', ['irrigation']],
    ['right heel has a shard of metal in it', ['impaled-object right heel']],
    ['no fever or diarrhea', ['no symptoms: no fever', 'no symptoms: diarrhea']],
    ['right elbow is painless', ['no pain right elbow']],
    ['right wrist tender but it moves', ['tenderness right wrist', 'note: but it moves']],
    ["collar is on and he's calmer", ['collar', "note: he's calmer"]],
  ]);
});
