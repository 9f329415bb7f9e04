// Answers that say where, or say something in no words of substance: nothing of them is lost. Invented.

import { describe } from 'vitest';
import { checkCorrections, checkStatements } from '../rows.ts';

describe('an answer that says where', () => {
  checkStatements([
    ['any tingling? slightly, in the toes', ['tingling toes severity=mild']],
    ['any pain? yes. right shin', ['pain right lower-leg']],
    [
      'any swelling? yeah. looking at the right shin now',
      ['note: any swelling: yeah', 'visit right lower-leg'],
    ],
    ['any pain? yes, but not in the chest', ['note: any pain: yes, but not in the chest']],
    ['any pain? yes, I banged my elbow', ['note: any pain: yes, I banged my elbow']],
    [
      'running along the collarbone, sore anywhere? only by the right shoulder',
      ['pain right shoulder', 'visit clavicle'],
    ],
    ['running down the neck, yell if it hurts anywhere. there', ['visit neck', 'pain neck']],
    ['yell if it hurts. pressing the breastbone. there', ['visit sternum', 'pain sternum']],
    // Of a spot that nobody named.
    ['does that hurt? nope', ['note: does that hurt: nope']],
  ]);
});

describe('an answer that settles nothing', () => {
  checkStatements([
    ['any blurred vision? only looking up', ['note: any blurred vision: only looking up']],
    ['any pain? just here', ['note: any pain: just here']],
    ['left or right? right', ['note: left or right: right']],
    ["how's the pain now? a bit worse", ['note: a bit worse']],
    ["what's her name? no idea", ['note: no idea']],
    [
      'do you remember it? yes. hit your knee? no',
      ['events: remember it: yes', 'note: hit your knee: no', 'visit knee'],
    ],
    // Nothing is felt there; the toe is not called sound.
    [
      'can you feel this? yes. okay, nothing on the big toe',
      ['note: can you feel this: yes', 'visit big-toe', 'note: nothing on the big toe'],
    ],
    ['other hand? can not', ['note: other hand: can not', 'visit hand']],
    [
      'tell me if it hurts. pressing the ribs. yes. down here, below the armpit',
      ['visit ribs', 'pain ribs', 'visit armpit', 'note: down here, below the armpit'],
    ],
  ]);
});

describe('what is told in one breath with what is to be done', () => {
  checkStatements([
    ['lift both legs for me, the right one sags', ['note: the right one sags']],
    [
      'tap the knee and the leg does not kick, right',
      ['visit knee', 'visit leg', 'note: tap the knee and the leg does not kick, right'],
    ],
    [
      'raise that knee off the mat. she cannot do it with the left',
      ['note: knee off the mat', 'note: she cannot do it with the left'],
    ],
    ['can swallow okay', ['note: can swallow okay']],
    ['can raise her arm over her head', ['no limited-motion arm', 'note: over her head']],
    // Must not: it is supposed, or told to somebody.
    ['lift it only if it does not hurt', []],
    ['can you swallow for me', []],
    ['hold your hands out, palms upwards', []],
  ]);
});

describe('the side that is asked for last', () => {
  checkCorrections([
    ['any tingling? in the thumb. right or left? right', ['side side=right ← last']],
    ['any tingling? in both thumbs. right or left? right', []],
  ]);
});
