// The veins of the neck: what is said of them is not said of a limb that bulges or a belly that is distended, nor the other way round.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('the veins of the neck', () => {
  checkStatements([
    ['neck veins are bulging', ['jugular-distension neck-veins']],
    ['neck veins. They are distended.', ['visit both neck-veins', 'jugular-distension both neck-veins']],
    ['veins standing out on her neck', ['jugular-distension neck-veins']],
    ['neck veins flat', ['no jugular-distension neck-veins']],
    ['neck veins okay, they are distended', ['jugular-distension both neck-veins']],
  ]);
});

describe('what bulges, sticks out or is distended besides', () => {
  checkStatements([
    ['right shin is bulging', ['visit right lower-leg', 'note: right shin is bulging']],
    ['left eye is bulging', ['visit left eye', 'note: left eye is bulging']],
    ['left wrist is sticking out at a funny angle', ['deformity left wrist', 'note: is sticking out']],
    ['belly is distended', ['distension abdomen']],
    ['belly is distended, neck veins are flat', ['distension abdomen', 'no jugular-distension neck-veins']],
  ]);
});
