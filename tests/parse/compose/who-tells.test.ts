// Who speaks is said first ("I'm his wife"), and then of this patient; how somebody has just fallen. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a relative who says who they are tells of the patient, behind "he" or "she"', () => {
  checkStatements([
    ["I'm her dad, she takes warfarin", ['medications: warfarin']],
    ["i'm his sister and he's allergic to latex", ['allergies: latex']],
    ["i'm her mum, my elbow hurts", ["note: i'm her mum, my elbow hurts"]],
    [
      "this is his brother, he's got a cut on his hand",
      ["note: this is his brother, he's got a cut on his hand"],
    ],
  ]);
});

describe('"after falling", of what has just been', () => {
  checkStatements([
    ["she's after slipping on the wet steps", ["mechanism: she's after slipping on the wet steps"]],
    ["he's after his dinner", ["note: he's after his dinner"]],
    ['his knee is swollen after falling on it', ['swelling knee', 'note: after falling on it']],
  ]);
});
