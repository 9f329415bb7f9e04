// Who is told to squeeze, push or wiggle can answer as to a question. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('the answer of somebody who was told to move', () => {
  checkStatements([
    // One end is named or in mind.
    ['right hand | grip my fingers for us, yeah good', ['visit right hand', 'motion right hand']],
    ['right arm | squeeze my fingers | no', ['visit right arm', 'no motion right hand']],
    ['wriggle your toes on the right, yep', ['motion right foot']],
    ['wriggle your toes on the right foot for me | yep', ['motion right foot']],
    ['right foot | push down on my hand, yep', ['visit right foot', 'motion right foot']],
    // None is, so the answer is kept beside what was told.
    ['grip my fingers for us, yeah good', ['note: grip my fingers for us: yeah']],
    ['push against my hands | yes', ['note: push against my hands: yes']],
    ["squeeze my fingers, no, can't", ["note: squeeze my fingers: no, can't"]],
    ['squeeze my fingers, equal, thanks', ['note: squeeze my fingers, equal']],
    ['right knee | squeeze my fingers, yep', ['visit right knee', 'note: squeeze my fingers: yep']],
    ["right hand | grip my fingers, can't", ['visit right hand', "note: grip my fingers: can't"]],
    // Must not: nobody answers.
    ['grip my fingers for us, good', []],
    ['squeeze my fingers | right knee swollen', ['swelling right knee']],
    ['lie still for me, yes', []],
  ]);
});
