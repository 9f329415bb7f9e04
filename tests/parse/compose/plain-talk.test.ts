// What plain talk means, sentence by sentence, where an earlier reading was wrong or lost something. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';
import { checkStatements } from '../rows.ts';

describe('a right that is no side', () => {
  checkStatements([
    ['bruise on the right over the ribs', ['contusion right ribs']],
    ["there's a cut right behind the left ear", ['laceration left behind-ear']],
    ['swelling right above the ankle', ['swelling lower-leg part=distal']],
    ['laceration right in the left palm', ['laceration left palm']],
    ['left knee, tender right over the kneecap', ['tenderness left knee', 'visit left knee']],
  ]);
});

describe('a finding that is on a place', () => {
  checkStatements([
    ['right elbow fine | the graze is on the left hip', ['no abnormality right elbow', 'abrasion left hip']],
    ['swelling is on both ankles', ['swelling both ankle']],
    ['no, the cut is on the forehead', ['laceration forehead']],
    ['she is on apixaban', ['medications: she is on apixaban']],
  ]);
});

describe('what was once kept in words alone, or read of another place', () => {
  checkStatements([
    ['right pupil bigger than the left', ['pupils equal=false quality=right-dilated']],
    ['resps quick and shallow, I make it twenty six', ['respirations rate=26 quality=rapid+shallow']],
    ['heart rate is quick, one fifteen', ['pulse rate=115 quality=rapid']],
    ['got a pulse at the left wrist', ['circulation left hand']],
    ["right collarbone's tented", ['deformity right clavicle']],
    ['right ribs crackle', ['crepitus right ribs']],
    ['blister on the right big toe', ['abnormality right big-toe quality=blister']],
    ['left hand | take a deep breath, any pain? on the right', ['visit left hand', 'pain right chest']],
    [
      'right ankle turned in | deformity mid shaft',
      ['deformity right ankle quality=rotated', 'note: deformity mid shaft'],
    ],
    ['right forearm | deformity mid shaft', ['visit right forearm', 'deformity right forearm part=mid']],
    [
      'on digoxin and apixaban, that is the blood thinner',
      ['medications: on digoxin and apixaban', 'medications: that is the blood thinner'],
    ],
    ['allergic to lychees, comes out in hives', ['allergies: lychees, comes out in hives']],
    ['cannula in the right forearm', ['note: cannula in the right forearm']],
    ['pupils equal, about three, both react', ['pupils equal=true reactive=true leftMm=3 rightMm=3']],
    ['back no swelling top to bottom', ['no swelling back']],
    ['no medical history apart from the gout', ['past-history: no medical history apart from the gout']],
    ['shoulder not sore, had a good look', ['no pain shoulder']],
    ['left knee nothing at all', ['no abnormality left knee']],
    ['weak in the right hand, nothing in the left', ['weakness right hand', 'note: nothing in the left']],
    ['second dose of fentanyl', ['medication text=second dose of fentanyl']],
    ['left radial palpable, thumb sore', ['pain left thumb', 'circulation left hand pulse=radial']],
    [
      'right hand cold | cap refill four seconds on that side, two on the other',
      [
        'no circulation right hand warmth=cold',
        'no circulation right hand capRefillSeconds=4',
        'circulation left hand capRefillSeconds=2',
      ],
    ],
    ['right heel | no sting left in, scraped it off', ['visit right heel', 'no sting right heel']],
    ["he's had this before, takes ramipril", ["past-history: he's had this before", 'medications: ramipril']],
    ['wrist pulse better after', ['visit wrist', 'note: wrist pulse better after']],
    ['right knee no problem', ['no abnormality right knee']],
    ['history of anything? epilepsy', ['past-history: epilepsy']],
  ]);
});

describe('each side with what is said of it', () => {
  checkStatements([
    [
      'both wrists: right is swollen, left is fine',
      ['visit both wrist', 'swelling right wrist', 'no abnormality left wrist'],
    ],
    [
      'knees: left swollen, right normal',
      ['visit both knee', 'swelling left knee', 'no abnormality right knee'],
    ],
    [
      "Collarbones: right one's fine, left one's got a step in it and it's sore",
      [
        'visit both clavicle',
        'no abnormality right clavicle',
        'deformity left clavicle',
        'pain left clavicle',
      ],
    ],
    ['hips okay left, sore right', ['no abnormality left hip', 'pain right hip']],
    [
      'hands: grips strong both sides, right thumb has a cut',
      ['visit both hand', 'laceration right thumb', 'motion both hand strength=strong'],
    ],
    ["Chest wall's stable, lungs clear both sides", ['no instability chest', 'note: lungs clear both sides']],
    [
      'eyes: left is swollen shut, right okay',
      ['visit both eye', 'swelling left eye', 'no abnormality right eye', 'note: shut'],
    ],
  ]);
});

describe('the belly by its quadrants', () => {
  checkStatements([
    [
      "belly: all four quadrants soft, except he's guarding left upper",
      [
        'visit abdomen',
        'no rigidity right upper-quadrant',
        'no rigidity both lower-quadrant',
        'guarding left upper-quadrant',
      ],
    ],
    [
      'all quadrants soft, tender left lower',
      [
        'no rigidity both upper-quadrant',
        'no rigidity both lower-quadrant',
        'tenderness left lower-quadrant',
      ],
    ],
    [
      'abdomen soft, no tenderness right upper, left upper, right lower, a bit tender left lower',
      [
        'no rigidity abdomen',
        'no tenderness right upper-quadrant',
        'no tenderness left upper-quadrant',
        'no tenderness right lower-quadrant',
        'tenderness left lower-quadrant severity=mild',
      ],
    ],
    ['Abdomen soft and non-tender in all four', ['no rigidity abdomen', 'no tenderness abdomen']],
    [
      'belly, tender upper right, rest is soft',
      ['tenderness right upper-quadrant', 'visit abdomen', 'note: rest is soft'],
    ],
    ['abdomen soft. cut on the upper left arm', ['no rigidity abdomen', 'laceration left upper-arm']],
  ]);
});

describe('what moves', () => {
  checkStatements([
    ['moves all four', ['motion left hand', 'motion right hand', 'motion left foot', 'motion right foot']],
    [
      "he's moving all four extremities equally",
      ['motion left hand', 'motion right hand', 'motion left foot', 'motion right foot'],
    ],
    ["foot's pink and warm, toes move", ['circulation foot warmth=warm quality=pink', 'motion foot']],
    ['left foot | move your toes for me', ['visit left foot', 'visit left toes']],
    ['not moving his legs', ['no motion both foot']],
    ["can't move his left arm", ['no motion left hand']],
    ['neck nontender, moves it fine', ['no tenderness neck', 'no limited-motion neck']],
  ]);
});

describe('a pulse', () => {
  checkStatements([
    [
      'Pulse in the left foot is there but weak, cap refill three seconds',
      ['circulation left foot quality=weak', 'no circulation left foot capRefillSeconds=3'],
    ],
    ['is there a pulse in the left foot? yes but weak', ['circulation left foot quality=weak']],
    ['checking the radial on the right', ['note: checking the radial on the right']],
    ['DP pulses two plus bilaterally', ['circulation both foot pulse=dorsalis-pedis quality=2+']],
    ['radials strong and equal', ['circulation both hand pulse=radial quality=strong+equal']],
    ['any pulse in the right wrist? no', ['no circulation right hand']],
  ]);
});

describe('an answer with its side', () => {
  checkStatements([
    ['left foot | Can you wiggle your toes for me? Yep both feet', ['visit left foot', 'motion both foot']],
    [
      'feet | Can you feel me touching here? Yes, on the right but not on the left',
      ['visit both foot', 'sensation right foot', 'no sensation left foot'],
    ],
    ['does it hurt anywhere else? my knee, the right one', ['pain right knee']],
    [
      'does it hurt if I push here? no. here? no. here? yes a bit',
      ['note: does it hurt if I push here: no', 'note: here: no', 'note: here: yes a bit'],
    ],
    [
      'Did you pass out at all? No, I remember everything',
      ['no events: Did you pass out at all: No', 'events: I remember everything'],
    ],
  ]);
});

describe('a new subject', () => {
  checkStatements([
    [
      "spine's straight, no steps, he winces at around T twelve",
      ['no deformity spine', 'tenderness thoracic-spine level=T12'],
    ],
    [
      "I don't see any bleeding but his jeans are soaked on the left thigh",
      ['visit left thigh', "note: I don't see any bleeding but his jeans are soaked on the left thigh"],
    ],
    ['left knee | his helmet is broken', ['visit left knee', 'mechanism: his helmet is broken']],
    ['left foot | grey jacket', ['visit left foot', 'note: grey jacket']],
    ["left knee | ski's broken", ['visit left knee', "note: ski's broken"]],
    [
      'left arm is amputated just below the elbow, not bleeding much',
      ['amputation left arm', 'note: just below the elbow, not bleeding much'],
    ],
    ["left knee doesn't hurt much", ["note: left knee doesn't hurt much"]],
    ['not much swelling on the left knee', ['note: not much swelling on the left knee']],
    ['left shoulder deformity no', ['note: left shoulder deformity no']],
  ]);
});

describe('after an instruction', () => {
  checkStatements([
    ['lift your arm, left elbow is swollen', ['swelling left elbow']],
    ['keep still for me, no pain in the hip', ['no pain hip']],
    [
      "Left arm he doesn't want to lift because of the collarbone, but hand's fine, pulse present",
      [
        'visit left arm',
        'visit left clavicle',
        'circulation left hand',
        "note: Left arm he doesn't want to lift because of the collarbone",
      ],
    ],
  ]);
});

describe('lists', () => {
  checkStatements([
    [
      'burns to his face, the front of the chest and both hands',
      ['burn face', 'burn chest part=anterior', 'burn both hand'],
    ],
    ['No neck pain, no back pain, no numbness', ['no pain neck', 'no pain back', 'no numbness back']],
    ['right ankle and left hip are both sore', ['pain right ankle', 'pain left hip']],
    ['no swelling except over the left forearm', ['swelling left forearm']],
    ['bleeding now from the left ear', ['bleeding left ear']],
    ['Right leg is shortened and externally rotated', ['deformity right leg quality=shortened+rotated']],
  ]);
});

describe('questions without their signs', () => {
  checkStatements([
    ['does your neck hurt at all no okay what about your back nope', ['no pain neck', 'no pain back']],
    ['any pain in your chest when you breathe yeah on this side, the left', ['pain left chest']],
    [
      'tell me if anything hurts as I go. Scalp? No. Forehead? No. Cheeks? No. Jaw? A little on the left.',
      ['no pain skull', 'no pain forehead', 'no pain both cheek', 'pain left jaw severity=mild'],
    ],
  ]);
});

describe('what is elsewhere or was before', () => {
  checkStatements([
    ['pain with movement of the right shoulder, none at rest', ['pain right shoulder', 'note: none at rest']],
    [
      "was tender over the left hip earlier, now it isn't",
      ['note: was tender over the left hip earlier', "note: now it isn't"],
    ],
    ["left knee is fine, no it isn't", ['no abnormality left knee', "note: no it isn't"]],
  ]);
});

describe("exceptions at a limb's end", () => {
  checkStatements([
    [
      'good distal pulses in all extremities except the right foot',
      [
        'circulation left hand',
        'circulation right hand',
        'circulation left foot',
        'note: except the right foot',
      ],
    ],
    [
      'csm intact in all four except the left hand',
      [
        'circulation right hand',
        'sensation right hand',
        'motion right hand',
        'circulation left foot',
        'sensation left foot',
        'motion left foot',
        'circulation right foot',
        'sensation right foot',
        'motion right foot',
        'note: except the left hand',
      ],
    ],
    ['pulses good in both feet except the left', ['circulation right foot', 'note: except the left']],
  ]);
});

describe('a distance is no size', () => {
  checkStatements([
    [
      "two puncture wounds on the right calf about a centimeter apart, swelling's up to the ankle",
      [
        'puncture right lower-leg count=2',
        'swelling right lower-leg',
        "note: about a centimeter apart, swelling's up to the ankle",
      ],
    ],
    [
      'obvious deformity of the left forearm about two inches above the wrist',
      ['deformity left forearm', 'visit left forearm', 'note: about two inches above the wrist'],
    ],
    ['bruise on the left thigh, ten centimetres across', ['contusion left thigh size=10+cm']],
  ]);
});

describe('words that go with what follows', () => {
  checkStatements([
    ['wiggle your toes good push against my hands good', ['visit toes', 'visit both hand']],
    ["she's guarding her belly and won't lie flat", ['guarding abdomen', "note: won't lie flat"]],
    [
      "looks like frostbite, can't feel any of his fingers on the right hand",
      ['discoloration right fingers quality=frostbite', 'no sensation right hand'],
    ],
  ]);
});

describe('words that mean another thing', () => {
  checkStatements([
    [
      'jaw opens and closes okay, bite feels normal to him',
      ['no limited-motion jaw', 'note: bite feels normal to him'],
    ],
    ['no response in the legs', ['visit both leg', 'note: no response in the legs']],
    ['numb between the legs? no', ['note: numb between the legs: no']],
    ["lip's split but not through", ['laceration mouth', 'note: but not through']],
    ['windpipe looks central to me', ['no tracheal-deviation trachea']],
    ['fishhook through the left thumb', ['impaled-object left thumb']],
    ['needle in', ['note: needle in']],
    [
      "right hand | can't bend the tip of the middle one",
      ['visit right hand', 'limited-motion right middle-finger part=distal'],
    ],
    [
      'pulse at the wrist is there, nail beds pink up in two seconds',
      ['circulation hand', 'circulation hand capRefillSeconds=2'],
    ],
  ]);
});

describe('answers that are neither', () => {
  checkStatements([
    [
      'left foot | Which toe am I touching? The big one. Correct.',
      ['visit left foot', 'note: Which toe am I touching: The big one'],
    ],
    ['left foot | can you feel this | sort of', ['visit left foot', 'note: can you feel this: sort of']],
    [
      'left hand | can you move your fingers? barely',
      ['visit left hand', 'note: can you move your fingers: barely', 'visit left fingers'],
    ],
  ]);
});

describe('what an exception leaves', () => {
  checkStatements([
    [
      "Belly's soft all four quadrants except he's guarding left upper",
      [
        'no rigidity abdomen',
        'guarding left upper-quadrant',
        'visit both upper-quadrant',
        'visit both lower-quadrant',
      ],
    ],
    [
      "Airway's open, he's talking to me, breathing looks okay, bit fast",
      ["note: Airway's open, he's talking to me, breathing looks okay, bit fast"],
    ],
  ]);
});

describe('a joint that does not move', () => {
  checkStatements([
    ["left ankle, can't move it", ['limited-motion left ankle']],
    ['he is unable to move his right shoulder', ['limited-motion right shoulder']],
    ["he can't move his right foot", ['no motion right foot']],
    ["can't move his left arm", ['no motion left hand']],
  ]);
});

describe('movement that is felt at a hip', () => {
  checkStatements([
    ["left hip, there's movement when i press", ['visit left hip', "note: there's movement when i press"]],
    ['left ankle, movement and sensation present', ['motion left foot', 'sensation left foot']],
  ]);
});

describe('a word for a place that says which way', () => {
  checkStatements([
    ['right wrist is swollen and bent back', ['swelling right wrist', 'deformity right wrist']],
    ['right wrist is bent, back is fine', ['deformity right wrist', 'no abnormality back']],
  ]);
});

describe('a question with a verb of its own', () => {
  it('does not ask again what was asked before', () => {
    expect(read('does your elbow hurt | no | did you bang your head | no', 'finding')).toEqual([
      'no pain elbow',
    ]);
    expect(read('does your elbow hurt | no | and your head | no', 'finding')).toEqual([
      'no pain elbow',
      'no pain head',
    ]);
  });
});

describe('a patient who is rolled', () => {
  checkStatements([
    ['rolled her, no bruising of the back', ['no contusion back']],
    ['rolled her quad on the trail', ['mechanism: rolled her quad on the trail']],
  ]);
});

describe('words of a limb check that tell of something else', () => {
  checkStatements([
    ['no sensation over the right calf', ['numbness right lower-leg']],
    ['sensation on the left shoulder is diminished', ['numbness left shoulder quality=decreased']],
    ['light touch is normal over the right forearm', ['no numbness right forearm']],
    [
      'left elbow | bruise, good movement',
      ['visit left elbow', 'contusion left elbow', 'no limited-motion left elbow'],
    ],
    [
      'right ankle | I can feel it clicking and crunching',
      ['visit right ankle', 'crepitus right ankle', 'note: clicking'],
    ],
    // Must not: an end of a limb is checked, whatever joint was named before.
    ['reduced sensation in the right foot', ['no sensation right foot quality=decreased']],
    ['left hand | good movement', ['visit left hand', 'motion left hand']],
    ['left hand | he can feel it fine', ['visit left hand', 'sensation left hand']],
  ]);
});

describe('the back of a place', () => {
  checkStatements([
    ['scalp: a gash on the back', ['visit skull', 'laceration skull part=posterior']],
    ['left forearm has a blister on the back', ['abnormality left forearm part=posterior quality=blister']],
    // Must not: what had its say is left, and the trunk has no other back.
    ['face fine, scrape on the back', ['no abnormality face', 'abrasion back']],
    ['belly soft, bruise on the back', ['no rigidity abdomen', 'contusion back']],
  ]);
});

describe('a place with a bare verb after it', () => {
  checkStatements([
    [
      'tender at L two | L three too',
      ['tenderness lumbar-spine level=L2', 'tenderness lumbar-spine level=L3'],
    ],
    [
      'C four is sore, C five and C six are not',
      ['pain cervical-spine level=C4', 'no pain cervical-spine level=C5', 'no pain cervical-spine level=C6'],
    ],
    ['right ankle is puffy but the knee is not', ['swelling right ankle', 'no swelling right knee']],
    ['the left hip is not tender but the knee is', ['no tenderness left hip', 'tenderness left knee']],
    // Must not: a denial cannot be turned by "is not", nor a place said with its own finding.
    [
      'no swelling of the knee | the ankle is not',
      ['no swelling knee', 'visit ankle', 'note: the ankle is not'],
    ],
    [
      'tender at T four and T five too',
      ['tenderness thoracic-spine level=T4', 'tenderness thoracic-spine level=T5'],
    ],
  ]);
});

describe('a pulse at a place', () => {
  checkStatements([
    ['pulses in both wrists', ['circulation both hand']],
    ['pulse at the right ankle', ['circulation right foot']],
    ['right radial: absent', ['no circulation right hand pulse=radial']],
    ['left foot pulse - weak', ['circulation left foot quality=weak']],
    [
      'no radial on the right, one on the left wrist, thready',
      ['no circulation right hand pulse=radial', 'circulation left hand pulse=radial quality=thready'],
    ],
    // Must not: one that is looked for was not found, and a thing that is counted is no pulse.
    [
      'checking for a pulse at the right ankle',
      ['visit right ankle', 'note: checking for a pulse at the right ankle'],
    ],
    ['pulse eighty, one graze on the left knee', ['pulse rate=80', 'abrasion left knee count=1']],
  ]);
});

describe('how something goes on', () => {
  checkStatements([
    [
      'hives on the belly | right arm fine | the hives are fading',
      ['rash abdomen', 'no abnormality right arm', 'note: hives are fading'],
    ],
    [
      'left wrist swollen | swelling is coming down',
      ['swelling left wrist', 'note: swelling is coming down'],
    ],
    [
      'left wrist | bruising is getting worse',
      ['visit left wrist', 'note: bruising is getting worse', 'contusion left wrist'],
    ],
    // Must not: what is gone is denied.
    ['left wrist swollen | the swelling has gone', ['swelling left wrist', 'no swelling left wrist']],
  ]);
});

describe('which place a finding goes to', () => {
  checkStatements([
    [
      'forehead | no bumps, no fluid from the nose',
      ['visit forehead', 'no swelling forehead', 'no fluid nose'],
    ],
    [
      'forehead | no boggy areas, nothing from the ears',
      ['visit forehead', 'no swelling forehead', 'no abnormality both ear'],
    ],
    ['belly tender left lower quadrant', ['tenderness left lower-quadrant', 'visit abdomen']],
    ['her left ankle and her shoulder hurt', ['pain left ankle', 'pain shoulder']],
    // Must not: a list under one "no" goes to the place it ends with.
    ['no bumps or bleeding from the forehead', ['no swelling forehead', 'no bleeding forehead']],
    ['left ankle and knee hurt', ['pain left ankle', 'pain left knee']],
  ]);
});

describe('what is told after a denial', () => {
  checkStatements([
    [
      "wasn't knocked out, recalls the whole crash",
      ["no events: wasn't knocked out", 'events: recalls the whole crash'],
    ],
    ['takes migraine tablets', ['medications: migraine tablets']],
    ['had a banana at noon', ['last-intake: had a banana at noon']],
    ['gave her a banana', ['food']],
    ["pelvis doesn't shift", ['no instability pelvis']],
    [
      'left leg | no shortening or rotation',
      ['visit left leg', 'no deformity left leg quality=shortened', 'no deformity left leg quality=rotated'],
    ],
  ]);
});

describe('what a question and its answer say of another place', () => {
  checkStatements([
    ['is your wrist sore? no, my elbow', ['no pain wrist', 'pain elbow']],
    ['does your back hurt? no. ribs? when I breathe', ['no pain back', 'pain ribs']],
    ['can it straighten? a bit', ['note: can it straighten: a bit']],
    [
      'left hand sore | been sick? any blood in it? no',
      ['pain left hand', 'no symptoms: any blood in it: no', 'note: been sick'],
    ],
    // Must not: the no stands where a place of somebody else is named.
    ['is your wrist sore? no, and the elbow?', ['no pain wrist', 'visit elbow']],
  ]);
});

describe('how far something goes', () => {
  checkStatements([
    [
      'burn on the left hand, redness up to the elbow',
      ['burn left hand', 'discoloration left hand quality=red', 'note: up to the elbow'],
    ],
    [
      'sting on the right shin, two puncture marks, swelling up to the knee',
      [
        'sting right lower-leg',
        'puncture right lower-leg count=2',
        'swelling right lower-leg',
        'note: to the knee',
      ],
    ],
    // Must not: the only place that is named is the place.
    ['swelling up to the elbow', ['swelling elbow']],
  ]);
});

describe('a finding that is at one place only', () => {
  checkStatements([
    ['no JVD, chest is stable', ['no jugular-distension neck-veins', 'no instability chest']],
    ['gash above the left ear', ['laceration left skull']],
    ['belly is rigid, big pain right', ['rigidity abdomen', 'pain right abdomen']],

    [
      'hands and feet are white',
      ['discoloration both hand quality=white', 'discoloration both foot quality=white'],
    ],
    ['blood running from her left ear', ['bleeding left ear']],
    ['right knee swollen and warm', ['swelling right knee', 'note: warm']],
    ['mouth was packed with mud', ['visit mouth', 'note: mouth was packed with mud']],
    // Must not: the limb's end is what is warm, and packing is care.
    ['right knee swollen, toes warm', ['swelling right knee', 'circulation right foot warmth=warm']],
    ['packed the right groin with gauze', ['wound-packing right groin']],
  ]);
});

describe('a scratch within a breath', () => {
  checkStatements([
    [
      "right foot | she can't feel me scratch the sole on the right",
      ['visit right foot', 'no sensation right foot'],
    ],
  ]);
});

describe('sides and places past a pause', () => {
  checkStatements([
    [
      'foot pulses good both sides, sensation fine in the left big toe',
      ['circulation both foot', 'sensation left foot digit=big-toe'],
    ],
    [
      'Neck: nothing. Back: nothing.',
      ['visit neck', 'no abnormality neck', 'visit back', 'no abnormality back'],
    ],
    ['left ankle sore | rolling her over to her right side on three', ['pain left ankle']],
    [
      'right arm weak | head fine | the weakness has gone',
      ['weakness right arm', 'no abnormality head', 'no weakness right arm'],
    ],
    // Must not: a "nothing" after a comma says nothing of a place by itself.
    ['fingers are cold on the right hand', ['no circulation right hand warmth=cold', 'visit right hand']],
  ]);
});

describe('what was lost in plain answers and comparisons', () => {
  checkStatements([
    ['right leg no worries', ['no abnormality right leg']],
    ['is your belly sore? only lower left', ['pain left lower-quadrant']],
    ['legs are weak, worse on the right', ['weakness both leg', 'note: worse on the right']],
    ['he takes nothing for medication', ['no medications: takes nothing for medication']],
    ['thirty five point two in the ear', ['temperature celsius=35.2']],
    [
      'gash on the right shin | right ankle fine | bleeding freely',
      [
        'laceration right lower-leg',
        'no abnormality right ankle',
        'bleeding right lower-leg severity=severe',
      ],
    ],
    // Must not: what was found swollen may bleed, and a thing that is worse with walking is told.
    [
      'gash on the chin | right ankle swollen | bleeding',
      ['laceration jaw', 'swelling right ankle', 'bleeding right ankle'],
    ],
    ['worse on walking', ['provocation: worse on walking']],
  ]);
});

describe('a question of where a pain goes', () => {
  checkStatements([
    [
      'does the back pain run down your legs? no',
      ['no radiation: does the back pain run down your legs: no', 'visit back', 'visit both leg'],
    ],
    // Must not: whether it is there is another question.
    ['do you have back pain? no', ['no pain back']],
  ]);
});

describe('what a place in mind does not get', () => {
  checkStatements([
    ['gunshot wound in the left thigh | no exit wounds', ['puncture left thigh', 'note: no exit wounds']],
    [
      "windpipe's pushed to the left, neck veins are up",
      ['tracheal-deviation left trachea', 'jugular-distension neck-veins'],
    ],
    ['sats ninety, that is on four litres', ['oxygen-saturation percent=90 onOxygen=true']],
    ["she's on four litres", ["note: she's on four litres"]],
    // Must not: where a place is said it is denied there.
    ['no exit wound on the belly', ['no puncture abdomen']],
  ]);
});

describe('a finding with a part of its own', () => {
  checkStatements([
    [
      'right knee: swollen on the inside, tender at the head of the fibula',
      ['visit right knee', 'swelling right knee part=medial', 'tenderness right lower-leg part=proximal'],
    ],
    ['her cheeks are flushed', ['discoloration both cheek quality=red']],
    // Must not: a part may lead to its place, and an eye is washed.
    ['tender over the outside of the left knee', ['tenderness left knee part=lateral']],
    ['flushed the right eye', ['irrigation right eye']],
  ]);
});

describe('a side told late, and places it does not reach', () => {
  checkStatements([
    ['my knee | which one? this one, left', ['visit knee', 'visit left knee']],
    ['sore toe, gone numb, left foot', ['pain left toes', 'numbness left toes', 'visit left foot']],
    ['left thumb cut | other fingers pink', ['laceration left thumb', 'circulation left hand quality=pink']],
    [
      'right arm | no grazes or cuts, shoulder is sore',
      ['visit right arm', 'no abrasion right arm', 'no laceration right arm', 'pain right shoulder'],
    ],
    ['left hip sore | womb is firm', ['pain left hip', 'rigidity abdomen']],
    ['hands are pale but warming up', ['discoloration both hand quality=pale', 'note: but warming up']],
    ['no crackles, chest is stable', ['no instability chest', 'note: no crackles']],
    // Must not: another hand is the other one, and a bone may crackle.
    ['left thumb cut | other hand pink', ['laceration left thumb', 'circulation right hand quality=pink']],
    ['right ribs crackle when I press', ['crepitus right ribs', 'note: when I press']],
    ['warming up her feet', ['warming both foot']],
  ]);
});

describe('a question after the signs of the whole body', () => {
  checkStatements([
    [
      'right hip sore | pulse eighty, sats ninety eight | any numbness? no',
      ['pain right hip', 'pulse rate=80', 'oxygen-saturation percent=98', 'no symptoms: any numbness: no'],
    ],
    // Must not: a place named since, and a sign that is taken there.
    [
      'pulse eighty | right hip | any numbness? no',
      ['pulse rate=80', 'visit right hip', 'no numbness right hip'],
    ],
    [
      'right hand | cap refill two seconds | any numbness? no',
      ['visit right hand', 'circulation right hand capRefillSeconds=2', 'no numbness right hand'],
    ],
  ]);
});
