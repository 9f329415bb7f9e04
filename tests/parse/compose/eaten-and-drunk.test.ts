// What the patient ate or drank is history; what somebody of ours gave is care. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('what the patient takes in', () => {
  checkStatements([
    ['drank some juice at eleven', ['last-intake: drank some juice at eleven']],
    ["she's sipping squash", ["last-intake: she's sipping squash"]],
    ["he's been drinking tea since nine", ["last-intake: he's been drinking tea since nine"]],
    ['took a few sips of water at two', ['last-intake: took a few sips of water at two']],
    ['downed a flask of coffee', ['last-intake: downed a flask of coffee']],
    ['had three hundred mils of juice', ['last-intake: had three hundred mils of juice']],
    ["she's eating a flapjack", ["last-intake: she's eating a flapjack"]],
    ['he kept some soup down', ['last-intake: he kept some soup down']],
    ['was drinking tea when her left arm went numb', ['last-intake: was drinking tea', 'numbness left arm']],
  ]);
});

describe('what is given', () => {
  checkStatements([
    ['gave her some sips of juice', ['fluids']],
    ['gave him a drink of squash', ['fluids']],
    ['hot sweet tea given', ['fluids']],
    ['got some juice into her', ['fluids']],
    ['gave her two hundred mils of water', ['fluids text=gave her two hundred mils of water']],
    ['had half a litre of saline', ['fluids text=had half a litre of saline']],
    ['gave him a biscuit', ['food']],
  ]);
});

describe('drink that nobody had', () => {
  checkStatements([
    ['we need drinking water', ['note: we need drinking water']],
    ["there's drinking water in the hut", ["note: there's drinking water in the hut"]],
    ["he's not drinking water", ["note: he's not drinking water"]],
    ["it hurts when she's drinking tea", ["note: it hurts when she's drinking tea"]],
    ['his friend gave him some juice', ['note: his friend gave him some juice']],
  ]);
});
