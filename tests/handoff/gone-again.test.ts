// What was found and later denied, of one side or of the whole, is told as both in every report. The talk is invented.

import { expect, test } from 'vitest';
import { sbar, textOf } from '../../src/handoff/index.ts';
import { reportsOf } from './from-talk.ts';

const told = (...lines: readonly string[]) => {
  const { input, radio, soap } = reportsOf(...lines);
  return { radio, soap, sbar: textOf(sbar(input)) };
};

test('one side denied of both that were found is denied over the radio of that side alone', () => {
  const { radio } = told('both knees are swollen', '[00:09:00] no swelling of the left knee');
  expect(radio).toContain(
    'Both knees: swelling at zero niner one zero but denied on the left at zero niner one niner',
  );
});

test('each side denied by itself is told with its time', () => {
  const { radio } = told(
    'both wrists are tender',
    '[00:05:00] no tenderness of the left wrist',
    '[00:08:00] no tenderness of the right wrist',
  );
  expect(radio).toMatch(
    /denied on the left at zero niner one five and denied on the right at zero niner one eight/,
  );
});

test.each([
  [
    'a place called normal later',
    ['right leg is numb', '[00:08:00] right leg is normal now'],
    'numbness at zero niner one zero but no abnormality at zero niner one eight',
    'Right leg: numbness at 09:10; also said: no abnormality of the right leg at 09:18',
  ],
  [
    'a face without a side',
    ['face drooping on the left', '[00:08:00] no facial droop any more'],
    'asymmetry at zero niner one zero but denied at zero niner one eight',
    'Left side of the face: asymmetry at 09:10; also said: no asymmetry of the face at 09:18',
  ],
  [
    'the whole that it is a part of',
    ['left elbow swollen', '[00:08:00] no swelling of the left arm'],
    'swelling at zero niner one zero but no swelling of the left arm at zero niner one eight',
    'Left elbow: swelling at 09:10; also said: no swelling of the left arm at 09:18',
  ],
] as const)('%s stands beside what was found, in all orders', (_, lines, onRadio, written) => {
  const { radio, sbar: inSbar, soap } = told(...lines);
  expect(radio).toContain(onRadio);
  expect(inSbar.slice(0, inSbar.indexOf('B  Background'))).toContain(written);
  expect(soap).toContain(written);
});

test.each([
  ['the other side', ['left arm is weak', '[00:08:00] right arm is normal now']],
  ['what was so before', ['left arm is normal', '[00:08:00] left arm is weak now']],
  ['the rest of the limb', ['left knee swollen', '[00:08:00] left leg is normal']],
  ['a part of it', ['abdomen is tender', '[00:08:00] no tenderness of the right lower quadrant']],
  ['an exception in one breath', ['no swelling of the face', 'swelling of the left side of the face']],
] as const)('%s takes nothing back', (_, lines) => {
  const { radio, sbar: inSbar } = told(...lines);
  expect(radio).not.toMatch(/ but /);
  expect(inSbar).not.toContain('also said');
});
