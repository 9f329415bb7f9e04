// What is wrong with a bike, a boat or a car is no finding, though its parts are called as those of a body are. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a machine', () => {
  checkStatements([
    [
      'the back wheel has a leak and the head lamp is cracked',
      ['note: the back wheel has a leak and the head lamp is cracked'],
    ],
    [
      'the hull is cracked and there is fluid in the foot well',
      ['note: the hull is cracked and there is fluid in the foot well'],
    ],
    [
      'radiator is bleeding fluid, burn on the right hand',
      ['burn right hand', 'note: radiator is bleeding fluid'],
    ],
    [
      'back tyre has a puncture, left ankle swollen',
      ['swelling left ankle', 'note: back tyre has a puncture'],
    ],
    ['hydraulic fluid on his left hand', ['visit left hand', 'note: hydraulic fluid on his left hand']],
  ]);
});

describe('a body beside it', () => {
  checkStatements([
    [
      'a puncture in the left thigh from the brake lever',
      ['puncture left thigh', 'note: from the brake lever'],
    ],
    ['his nose is bleeding bruised and swollen', ['bleeding nose', 'contusion nose', 'swelling nose']],
    ['left foot well perfused', ['circulation left foot quality=well-perfused']],
    ['clear fluid from the left ear', ['fluid left ear']],
  ]);
});
