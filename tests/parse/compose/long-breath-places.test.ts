// A long breath without pauses: each thing goes to the place it was said of. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a place that is named by its limb and side after it', () => {
  checkStatements([
    ['fingers left hand white', ['discoloration left fingers quality=white']],
    [
      'heel left foot blistered heel right foot red',
      ['abnormality left heel quality=blister', 'discoloration right heel quality=red'],
    ],
    ['wrist right arm deformed', ['deformity right wrist']],
    ['checking the hand right arm is sore', ['pain right arm', 'visit right hand']],
    ['hand fine right arm sore', ['no abnormality hand', 'pain right arm']],
  ]);
});

describe('what is told to the team ends where something is stated', () => {
  checkStatements([
    [
      'log roll on three lovely lumbar spine no tenderness sacrum tender',
      ['no tenderness lumbar-spine', 'tenderness sacrum'],
    ],
    ['keep still for me okay right ear bleeding', ['bleeding right ear']],
    ['ready to lift thanks left hip deformed', ['deformity left hip']],
    ['lift your arm on my count okay', []],
  ]);
});

describe('what somebody is to bring was not given', () => {
  checkStatements([
    ['left forearm deformed get me a splint', ['deformity left forearm']],
    ['right thigh bleeding badly pass me the tourniquet', ['bleeding right thigh severity=severe']],
    ["right thumb's amputated find us that thumb", ['amputation right thumb']],
    ['left forearm deformed splint on', ['deformity left forearm', 'splint left forearm']],
  ]);
});

describe('what has a place by itself takes none from what follows', () => {
  checkStatements([
    [
      'no jugular distension right ribs crackling',
      ['no jugular-distension neck-veins', 'crepitus right ribs'],
    ],
    ['windpipe midline left shoulder bruising', ['no tracheal-deviation trachea', 'contusion left shoulder']],
    ['flail segment left chest bruising', ['paradoxical-motion left chest', 'contusion left chest']],
  ]);
});

describe('ribs that move the wrong way', () => {
  checkStatements([
    ['left ribs sink in when she breathes in', ['paradoxical-motion left ribs']],
    ['chest wall caving in on the right as he breathes in', ['paradoxical-motion right chest']],
    ['left ribs | they are moving the wrong way', ['visit left ribs', 'paradoxical-motion left ribs']],
    ['ribs on the left, going the wrong way', ['paradoxical-motion left ribs']],
    ['belly goes in when she breathes in', ['visit abdomen', 'note: belly goes in when she breathes in']],
  ]);
});
