// How circulation, sensation and motion read; the entries are invented.

import { expect, test } from 'vitest';
import { soap } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { ASPECTS, type CsmStatement } from '../../src/terms/index.ts';
import { input, made } from './made-up.ts';

const texts = (entries: readonly Entry[]): readonly string[] =>
  soap(input(entries)).lines.map(({ text }) => text);

const fours = (change: (said: CsmStatement) => CsmStatement = (said) => said): readonly Entry[] =>
  (['hand', 'foot'] as const).flatMap((site) =>
    (['left', 'right'] as const).flatMap((side) =>
      ASPECTS.map((aspect) =>
        made(`${site} ${side} ${aspect}`, change({ kind: 'csm', site, side, aspect, present: true })),
      ),
    ),
  );

test('all four limbs alike share one sentence with all twelve entries', () => {
  const line = soap(input(fours())).lines.find(
    ({ role, text }) => role === 'line' && text.startsWith('Circulation, '),
  );
  expect(line?.entries).toHaveLength(12);
  expect(line?.text).toBe('Circulation, sensation and motion intact in both hands and both feet.');
});

test('the heading of the section is no claim: it rests on no entry', () => {
  const heading = soap(input(fours())).lines.find(
    ({ role, text }) => role === 'heading' && /^Circ/.test(text),
  );
  expect(heading?.entries).toEqual([]);
});

test('a limb that is not intact is told apart, and first', () => {
  const said = texts(
    fours((one) =>
      one.site === 'foot' && one.side === 'left' && one.aspect === 'circulation'
        ? { ...one, present: false, pulse: 'dorsalis-pedis', warmth: 'cool', capRefillSeconds: 4 }
        : one,
    ),
  );
  const lost =
    'Circulation NOT intact in the left foot: no dorsalis pedis pulse, capillary refill 4 seconds, cool.';
  expect(said).toContain(lost);
  expect(said).toContain('Circulation, sensation and motion intact in both hands and the right foot.');
  expect(said).toContain('Sensation and motion intact in the left foot.');
  expect(said.indexOf(lost)).toBeLessThan(said.indexOf('Sensation and motion intact in the left foot.'));
});

test('a limb whose side was not said is not counted among both', () => {
  const entry = made('a', { kind: 'csm', site: 'hand', side: null, aspect: 'motion', present: true });
  expect(texts([entry])).toContain('Motion intact in the hand (side not said).');
});

test('a digit is named in place of its limb', () => {
  const entry = made('a', {
    kind: 'csm',
    site: 'hand',
    side: 'right',
    aspect: 'sensation',
    present: false,
    digit: 'little-finger',
  });
  expect(texts([entry])).toContain('Sensation NOT intact in the right little finger.');
});

test('what was said of one aspect stands beside it, and the others keep their sentence', () => {
  const said = texts(
    fours((one) => (one.site === 'hand' && one.aspect === 'circulation' ? { ...one, pulse: 'radial' } : one)),
  );
  expect(said).toContain('Circulation (radial pulse present), sensation and motion intact in both hands.');
  expect(said).toContain('Circulation, sensation and motion intact in both feet.');
});

test('the same said again is told once, with its latest time and both entries', () => {
  const again = (id: string, time: string) =>
    made(id, { kind: 'csm', site: 'foot', side: 'left', aspect: 'motion', present: true }, { time });
  const line = soap(input([again('a', '14:06'), again('b', '14:20')])).lines.find(
    ({ role, text }) => role === 'line' && text.startsWith('Motion'),
  );
  expect(line).toMatchObject({ text: 'Motion intact in the left foot, at 14:20.', entries: ['a', 'b'] });
});

test('a limb that was intact and then was not is told both ways, each with its time', () => {
  const at = (id: string, present: boolean, time: string) =>
    made(id, { kind: 'csm', site: 'foot', side: 'left', aspect: 'motion', present }, { time });
  const said = texts([at('a', true, '14:06'), at('b', false, '14:20')]);
  expect(said).toContain('Motion NOT intact in the left foot, at 14:20.');
  expect(said).toContain('Motion intact in the left foot, at 14:06.');
});
