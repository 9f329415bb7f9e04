// The red criteria of the 2021 guideline: any one is a high risk of serious

import { proximalLongBones } from './bones.ts';
import { respiratoryDistress } from './breathing.ts';
import { type Criterion, red } from './criterion.ts';
import { amputation, ruinedLimb } from './limbs.ts';
import * as reading from './readings.ts';
import { spineWithLoss } from './spinal.ts';
import { chestWall, pelvis, skull } from './trunk.ts';
import { bleeding, penetrating } from './wounds.ts';

/** In the order of the guideline's box. Codes deprecated with the 2011 scheme are left out. */
export const RED: readonly Criterion[] = [
  red(
    '2903015',
    'penetrating-injury',
    'Penetrating injuries to head, neck, torso, and proximal extremities',
    penetrating,
  ),
  red('2903009', 'skull-deformity', 'Skull deformity, suspected skull fracture', skull),
  red(
    '2903039',
    'spinal-injury-with-loss',
    'Suspected spinal injury with new motor or sensory loss',
    spineWithLoss,
  ),
  red('2903005', 'chest-wall', 'Chest wall instability, deformity, or suspected flail chest', chestWall),
  red('2903013', 'pelvic-fracture', 'Suspected pelvic fracture', pelvis),
  red(
    '2903021',
    'proximal-long-bones',
    'Suspected fracture of two or more proximal long bones',
    proximalLongBones,
  ),
  red('2903003', 'ruined-extremity', 'Crushed, degloved, mangled, or pulseless extremity', ruinedLimb),
  red('2903001', 'amputation', 'Amputation proximal to wrist or ankle', amputation),
  red(
    '2903023',
    'active-bleeding',
    'Active bleeding requiring a tourniquet or wound packing with continuous pressure',
    bleeding,
  ),
  red('2903041', 'commands', 'Unable to follow commands (motor GCS < 6)', reading.cannotFollowCommands),
  red('2903037', 'breathing-rate', 'RR < 10 or > 29 breaths/min', reading.breathingRate),
  red(
    '2903033',
    'respiratory-distress',
    'Respiratory distress or need for respiratory support',
    respiratoryDistress,
  ),
  red('2903035', 'room-air-saturation', 'Room-air pulse oximetry < 90%', reading.roomAirSaturation),
  red(
    '2903029',
    'systolic-child',
    'Age 0-9 years: SBP < 70 mm Hg + (2 x age in years)',
    reading.childPressure,
  ),
  red('2903031', 'systolic-10-to-64', 'Age 10-64 years: SBP < 90 mmHg', reading.pressureAt(10, 64, 90)),
  red('2903025', 'pulse-over-systolic', 'Age >= 10 years: HR > SBP', reading.pulseOverSystolic),
  red(
    '2903027',
    'systolic-65-up',
    'Age >= 65 years: SBP < 110 mmHg',
    reading.pressureAt(65, Number.POSITIVE_INFINITY, 110),
  ),
];
