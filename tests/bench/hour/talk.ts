// An invented hour of examination as it is said, by a seed: looks and findings, signs in sets, history, care, corrections and
// the talk beside it, twelve utterances a minute.

import { fillOf } from '../../parse/composed/fill.ts';
import { TEMPLATES } from '../../parse/composed/templates.ts';
import { type Chance, seeded } from '../../seeded.ts';

const A_MINUTE = 12;
export const MINUTES = 60;

const BESIDE = [
  'okay',
  'you are doing really well',
  'can somebody hold the torch a bit lower please',
  'wriggle those toes for me',
  'the helicopter is about twenty minutes out I think',
  'keep your head still for me',
  'right, moving on',
  'tell me if anything hurts',
  'the rope bag is under the big tree',
  'hang on, let me get my gloves on',
  'deep breath in for me',
  'what day is it today?',
];

const ENDS = [
  'C S M intact in all four',
  'good pulse in the left foot, toes are warm and he can wiggle them',
  'cap refill under two seconds in the right hand',
  'can you feel me touching your left foot? yeah',
  'sensation intact in both hands, grip strong and equal',
];

const TOLD = [
  'any allergies? just penicillin',
  'takes aspirin every morning',
  'no past medical history',
  'last ate around noon, a sandwich',
  'he slipped on the wet rock and fell about four metres',
  'denies losing consciousness',
  'the pain started right after the fall and it is sharp',
];

const CARE = [
  'splint on the left lower leg',
  'oxygen on at fourteen ten',
  'pressure dressing on the right forearm',
  'giving him paracetamol one gram by mouth',
  'blanket round him and an insulating mat under him',
  'collar is on',
];

const REPAIRS = ['correction, the left one', 'strike that', 'make that ninety four', 'no, the right'];

/** A set of signs, drifting over the hour. */
const signs = ({ whole, pick }: Chance, minute: number): readonly string[] => [
  `pulse ${whole(84, 96) + Math.floor(minute / 4)}, ${pick(['strong and regular', 'regular', 'weak'])}`,
  `pressure ${whole(104, 128)} over ${whole(60, 82)}`,
  `resps ${whole(14, 22)}, ${pick(['unlaboured', 'shallow', 'regular'])}`,
  `sats ${whole(93, 99)} percent on air`,
  pick(['pupils equal and reactive', 'skin pale, cool and dry', 'G C S fifteen', 'alert and oriented']),
];

const composed = Object.values(TEMPLATES);

/** What a minute of it holds, each line an utterance. */
function minuteOf(chance: Chance, minute: number): readonly string[] {
  const lines: string[] = minute % 5 === 0 ? [...signs(chance, minute)] : [];
  while (lines.length < A_MINUTE) {
    const turn = chance.next();
    if (turn < 0.45)
      lines.push(
        ...chance
          .pick(composed)(fillOf(chance.whole(1, 1_000_000)))
          .talk.split(' | '),
      );
    else if (turn < 0.75) lines.push(chance.pick(BESIDE));
    else if (turn < 0.85) lines.push(chance.pick(ENDS));
    else if (turn < 0.92) lines.push(chance.pick(TOLD));
    else if (turn < 0.97) lines.push(chance.pick(CARE));
    else lines.push(chance.pick(REPAIRS));
  }
  return lines.slice(0, A_MINUTE);
}

const two = (count: number): string => String(count).padStart(2, '0');

/** An hour as a talk file; another seed says other things. */
export function hourOfTalk(seed: number): string {
  const chance = seeded(seed);
  const lines = Array.from({ length: MINUTES }, (_, minute) =>
    minuteOf(chance, minute).map(
      (line, turn) => `[00:${two(minute)}:${two(Math.floor((turn * 60) / A_MINUTE))}] ${line}`,
    ),
  );
  return ['@start 2031-04-05T14:02:00+02:00', ...lines.flat()].join('\n');
}
