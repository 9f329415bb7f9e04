// What to watch for beside each kind of problem, named as such; common practice, no source.

import type { Finding, Region } from '../../terms/index.ts';

export const WATCH_BY_REGION: Readonly<Partial<Record<Region, readonly string[]>>> = {
  head: ['falling GCS', 'vomiting', 'unequal pupils', 'a seizure'],
  neck: ['trouble breathing', 'new numbness or weakness'],
  chest: ['laboured breathing', 'falling saturation'],
  abdomen: ['pulse up and pressure down', 'a belly that grows rigid'],
  pelvis: ['pulse up and pressure down'],
  back: ['new numbness or weakness'],
};

/** By the words said of a finding. */
export const WATCH_BY_QUALITY: Readonly<Record<string, readonly string[]>> = {
  fracture: ['loss of pulse, sensation or motion beyond it'],
  'open-fracture': ['bleeding', 'loss of pulse, sensation or motion beyond it'],
  dislocation: ['loss of pulse, sensation or motion beyond it'],
};

export const WATCH_BY_FINDING: Readonly<Partial<Record<Finding, readonly string[]>>> = {
  deformity: ['loss of pulse, sensation or motion beyond it'],
  crepitus: ['loss of pulse, sensation or motion beyond it'],
  instability: ['loss of pulse, sensation or motion beyond it'],
  swelling: ['growing pain or numbness'],
  bleeding: ['soaking through', 'pulse up and pressure down'],
  amputation: ['soaking through', 'pulse up and pressure down'],
  avulsion: ['soaking through'],
  puncture: ['bleeding', 'a wound that runs deeper than it looks'],
  'impaled-object': ['movement of the object', 'bleeding'],
  burn: ['swelling', 'cooling of the body'],
  bite: ['swelling that spreads'],
  sting: ['swelling of the face', 'trouble breathing'],
  rash: ['swelling of the face', 'trouble breathing'],
};
