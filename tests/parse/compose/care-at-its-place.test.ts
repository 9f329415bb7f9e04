// Where care was given: at the place it names, at that of the wound it names, or at the one that is spoken of. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a place that was dressed', () => {
  checkStatements([
    ['dressed her right elbow', ['dressing right elbow']],
    ['right shin has been dressed', ['dressing right lower-leg']],
    ['right shin scraped and dressed', ['abrasion right lower-leg', 'dressing right lower-leg']],
    ['dressed the scrape on the right heel', ['abrasion right heel', 'dressing right heel']],
    [
      'covered the blister on the right heel',
      ['abnormality right heel quality=blister', 'dressing right heel'],
    ],
    ['cleaned and dressed the right palm', ['irrigation right palm', 'dressing right palm']],
    // Must not: clothes, and what is still to be done.
    [
      "he's dressed warmly, right hand is warm",
      ['circulation right hand warmth=warm', "note: he's dressed warmly"],
    ],
    ['he dressed himself', ['note: he dressed himself']],
    ['we should dress the right elbow', ['note: we should dress the right elbow']],
    ['is the right shin dressed', ['visit right lower-leg', 'note: is the right shin dressed']],
  ]);
});

describe('what was done to it', () => {
  checkStatements([
    ['right elbow scraped | dressed it', ['abrasion right elbow', 'dressing right elbow']],
    ['right wrist deformed | I have splinted it', ['deformity right wrist', 'splint right wrist']],
    ['right thigh bleeding | put a tourniquet on it', ['bleeding right thigh', 'tourniquet right thigh']],
    ['both shins scraped | bandaged them', ['abrasion both lower-leg', 'bandage both lower-leg']],
    // Must not: of a place where nothing is wrong nobody means it, and a drug has no place.
    [
      'right elbow scraped | pelvis not tender | dressed it',
      ['abrasion right elbow', 'no tenderness pelvis', 'dressing'],
    ],
    ["right elbow scraped | didn't dress it", ['abrasion right elbow', "note: didn't dress it"]],
  ]);
});
