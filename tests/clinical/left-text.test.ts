// The spoken answer to "what's left", on invented entries.

import { describe, expect, it } from 'vitest';
import { leftText, reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import type { Side, Site } from '../../src/terms/index.ts';
import { clock, csm, csmAllFour, denied, visit } from './build.ts';

const left = (entries: readonly Entry[]): string => leftText(reckon(entries, { now: clock(0) }));

const clear = (...sites: readonly (readonly [Site, Side | null])[]): readonly Entry[] =>
  sites.map(([site, side]) => denied(site, side, 'tenderness'));

const HEAD = clear(
  ['skull', null],
  ['face', null],
  ['eye', 'both'],
  ['ear', 'both'],
  ['nose', null],
  ['mouth', null],
  ['jaw', null],
);
const ARMS = clear(
  ...(['upper-arm', 'elbow', 'forearm', 'wrist', 'hand'] as const).map((site) => [site, 'both'] as const),
);
const LEGS = clear(
  ...(['thigh', 'knee', 'lower-leg', 'ankle', 'foot'] as const).map((site) => [site, 'both'] as const),
);
const TRUNK = clear(
  ['neck', null],
  ['trachea', null],
  ['cervical-spine', null],
  ['clavicle', 'both'],
  ['shoulder', 'both'],
  ['scapula', 'both'],
  ['sternum', null],
  ['ribs', 'both'],
  ['upper-quadrant', 'both'],
  ['lower-quadrant', 'both'],
  ['pelvis', null],
);
const BACK = clear(
  ['thoracic-spine', null],
  ['lumbar-spine', null],
  ['sacrum', null],
  ['tailbone', null],
  ['flank', 'both'],
);

describe('what is left', () => {
  it('is, before anything is said, the whole body in exam order and the limbs’ ends', () => {
    expect(left([])).toBe(
      'Left to examine: head, neck, both shoulders, both arms, chest, abdomen, pelvis, both legs, back. ' +
        'Not checked: C S M of both hands and both feet.',
    );
  });
  it('names one limb where the other was examined', () => {
    const one = LEGS.map((entry) => ({ ...entry, side: 'left' }) as Entry);
    expect(left([...HEAD, ...TRUNK, ...ARMS, ...one, ...BACK])).toBe(
      'Left to examine: right leg. Not checked: C S M of both hands and both feet.',
    );
  });
  it('names the rest of a limb of whose foot something was checked', () => {
    const one = LEGS.map((entry) => ({ ...entry, side: 'left' }) as Entry);
    expect(left([...HEAD, ...TRUNK, ...ARMS, ...one, ...BACK, ...csmAllFour()])).toBe(
      'Left to examine: right thigh, right knee, right lower leg, right ankle.',
    );
  });
  it('names the sites that lack of a region', () => {
    const some = LEGS.filter((entry) => entry.kind === 'finding' && entry.site !== 'ankle');
    expect(left([...HEAD, ...TRUNK, ...ARMS, ...some, ...BACK, ...csmAllFour()])).toBe(
      'Left to examine: both ankles.',
    );
  });
  it('tells what was only touched apart', () => {
    const visited = visit('pelvis', null);
    const trunk = TRUNK.filter((entry) => entry.kind === 'finding' && entry.site !== 'pelvis');
    expect(left([...HEAD, ...trunk, ...ARMS, ...LEGS, ...BACK, visited, ...csmAllFour()])).toBe(
      'Touched, nothing said: pelvis.',
    );
  });
  it('names the part of a limb’s end that lacks', () => {
    const checks = csmAllFour().filter(
      (entry) => !(entry.kind === 'csm' && entry.side === 'left' && entry.site === 'foot'),
    );
    const all = [...HEAD, ...TRUNK, ...ARMS, ...LEGS, ...BACK, ...checks];
    expect(left(all)).toBe('Not checked: C S M of left foot.');
    expect(
      left([...all, csm('foot', 'left', 'circulation', true), csm('foot', 'left', 'motion', false)]),
    ).toBe('Not checked: sensation of the left foot.');
  });
  it('says, where all was spoken of, only that', () => {
    const all = [...HEAD, ...TRUNK, ...ARMS, ...LEGS, ...BACK, ...csmAllFour()];
    expect(left(all)).toBe('Every step was spoken of.');
  });
  it('counts the rest of a long list', () => {
    const text = left([...clear(['face', null], ['neck', null], ['sternum', null], ['sacrum', null])]);
    expect(text).toMatch(/^Left to examine: skull, .*, and \d+ more\./);
  });
  it('calls nothing normal, clear or fine', () => {
    for (const entries of [[], HEAD, [...HEAD, ...TRUNK], [...HEAD, ...LEGS, ...csmAllFour()]])
      expect(left(entries)).not.toMatch(/normal|clear|fine|okay|good|unremarkable/i);
  });
});
