// The yellow criteria of the 2021 guideline: any one is a moderate risk of serious injury.

import { pregnantOver20Weeks } from '../told/pregnancy.ts';
import { type Criterion, yellow } from './criterion.ts';
import * as judgement from './judgement.ts';
import * as mechanism from './mechanism.ts';

/** Mechanism first, then the responder's judgement, in the order of the guideline's box. */
export const YELLOW: readonly Criterion[] = [
  yellow('2904009', 'ejection', 'Crash: partial or complete ejection', mechanism.ejection),
  yellow(
    '2904011',
    'intrusion',
    'Crash: intrusion > 12 in occupant site or > 18 in any site, or need for extrication',
    mechanism.intrusion,
  ),
  yellow('2904007', 'death-in-vehicle', 'Crash: death in passenger compartment', mechanism.deathInVehicle),
  yellow(
    '2904029',
    'unrestrained-child',
    'Crash: child (age 0-9) unrestrained or in unsecured child safety seat',
    mechanism.unrestrainedChild,
  ),
  yellow(
    '2904013',
    'vehicle-telemetry',
    'Crash: vehicle telemetry data consistent with severe injury',
    mechanism.telemetry,
  ),
  yellow(
    '2904035',
    'rider-separated',
    'Rider separated from transport vehicle with significant impact',
    mechanism.riderSeparated,
  ),
  yellow(
    '2904001',
    'pedestrian-or-cyclist',
    'Pedestrian/bicycle rider thrown, run over, or with significant impact',
    mechanism.pedestrianOrCyclist,
  ),
  yellow('2904031', 'fall-over-10-feet', 'Fall from height > 10 feet (all ages)', mechanism.highFall),
  yellow(
    '2904033',
    'low-fall-head',
    'Low-level fall at age <= 5 or >= 65 with significant head impact',
    mechanism.lowFall,
  ),
  yellow('2904019', 'anticoagulant', 'Anticoagulant use', judgement.anticoagulant),
  yellow('2904039', 'child-abuse', 'Suspicion of child abuse', judgement.childAbuse),
  yellow('2904037', 'special-needs', 'Special, high-resource healthcare needs', judgement.specialNeeds),
  yellow('2904021', 'pregnancy-over-20-weeks', 'Pregnancy > 20 weeks', pregnantOver20Weeks),
  yellow('2904027', 'burns-with-trauma', 'Burns in conjunction with trauma', judgement.burnsWithTrauma),
  yellow('2904023', 'own-judgement', 'Other EMS judgment', judgement.ownJudgement),
];
