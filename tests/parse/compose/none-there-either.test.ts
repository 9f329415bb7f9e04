// "No tenderness in the neck none in the chest": behind a denial a "none" with its place denies the same there. Invented talk.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a "none" with a place behind a denial', () => {
  checkStatements([
    ['no swelling in the neck none in the jaw', ['no swelling neck', 'no swelling jaw']],
    ['no pain in the chest | none over the sacrum', ['no pain chest', 'no pain sacrum']],
    [
      'no bruising or swelling of the face none of the nose and the jaw is tender',
      ['no contusion face', 'no swelling face', 'no contusion nose', 'no swelling nose', 'tenderness jaw'],
    ],
    [
      'no tenderness over the sternum none over the lumbar spine but at t four there is tenderness',
      ['no tenderness sternum', 'no tenderness lumbar-spine', 'tenderness thoracic-spine level=T4'],
    ],
    ['no pain in the neck none in the chest and belly', ['no pain neck', 'no pain chest', 'no pain abdomen']],
    [
      'no swelling of the right wrist none of the right elbow',
      ['no swelling right wrist', 'no swelling right elbow'],
    ],
  ]);
});

describe('what stays in words', () => {
  checkStatements([
    ['bruise on the chest none on the back', ['contusion chest', 'visit back', 'note: none on the back']],
    ['no pain in the neck none at rest', ['no pain neck', 'note: none at rest']],
    ['no swelling of the left knee none of the ankle', ['no swelling left knee', 'note: none of the ankle']],
  ]);
});
