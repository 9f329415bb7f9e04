// An "okay" to the patient, without a pause, behind the place that is to be looked at. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('an "okay" before anything was felt', () => {
  checkStatements([
    ["i'm going to press along your right shin okay let me know", ['visit right lower-leg']],
    ["i'll feel your left shoulder okay try to keep still", ['visit left shoulder']],
    ['looking in your right ear okay tell me to stop', ['visit right ear']],
    ["we're going to have a look at your belly okay any soreness", ['visit abdomen']],
    ["i'm going to check the right elbow okay", ['visit right elbow']],
  ]);
});

describe('an "okay" that says how the place is', () => {
  checkStatements([
    ['right elbow okay on to the wrist', ['no abnormality right elbow', 'visit right wrist']],
    ['checking the right elbow okay no swelling', ['no abnormality right elbow', 'no swelling right elbow']],
    ["i'm going to feel your chest no pain left hip okay", ['no pain chest', 'no abnormality left hip']],
    ["your right elbow's okay", ['no abnormality right elbow']],
  ]);
});
