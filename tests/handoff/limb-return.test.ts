// A limb's end that was lost and is back is told with both times; the talk is invented.

import { beforeAll, describe, expect, test } from 'vitest';
import type { Reader } from '../../src/parse/index.ts';
import { realReader } from '../talk-case.ts';
import { toldOf } from './talk-told.ts';

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

const told = (...lines: readonly string[]) => toldOf(reader, lines);
const assessment = ({ soap }: ReturnType<typeof told>): string =>
  /ASSESSMENT\n([\s\S]*)\nPLAN/.exec(soap)?.[1] ?? '';

describe('said to be back later', () => {
  test('a pulse is told as lost and as intact since, and so is the criterion that rests on it', () => {
    const talk = told(
      '[00:00:10] left foot no circulation',
      '[00:05:00] left foot pulse is back, circulation is good now',
    );
    expect(assessment(talk)).toContain('Circulation NOT intact in the left foot, at 09:10; intact at 09:15');
    expect(assessment(talk)).toContain('left foot: no pulse at 09:10, intact at 09:15');
    expect(talk.mist).toContain('Circulation NOT intact in the left foot, at 09:10; intact at 09:15');
    expect(talk.radio).toMatch(/left foot, at zero niner one zero, intact at zero niner one five/);
  });

  test('sensation and motion are told so too, each by itself', () => {
    const talk = told(
      "[00:01:00] can't feel the right hand",
      '[00:02:00] cannot move the left hand',
      '[00:05:00] sensation intact in the right hand',
      '[00:06:00] left hand moves again',
    );
    expect(assessment(talk)).toContain('Sensation NOT intact in the right hand, at 09:11; intact at 09:15');
    expect(assessment(talk)).toContain('Motion NOT intact in the left hand, at 09:12; intact at 09:16');
  });

  test('of two feet the one that is back is named', () => {
    const talk = told(
      '[00:00:10] no pulse in either foot',
      '[00:05:00] right foot has a pulse now',
      '[00:06:00] left foot warm',
    );
    expect(assessment(talk)).toContain(
      'Circulation NOT intact in both feet, at 09:10; circulation of the right foot intact at 09:15',
    );
    expect(assessment(talk)).toContain(
      'left foot: no pulse at 09:10; right foot: no pulse at 09:10, intact at 09:15',
    );
  });

  test('in a long report it is told in few words', () => {
    const talk = told(
      '[00:00:10] left foot no circulation',
      '[00:01:00] left thigh deformity, crepitus and heavy bleeding, pelvis unstable, belly rigid',
      '[00:02:00] pulse one thirty, pressure eighty over fifty, gcs twelve',
      '[00:03:00] a rock rolled over his leg on the scree below the col',
      '[00:05:00] left foot pulse is back',
    );
    expect(talk.radio).toMatch(
      /circulation NOT intact at zero niner one zero but intact at zero niner one five|at zero niner one zero, intact at zero niner one five/,
    );
  });
});

describe('what answers nothing stands beside nothing', () => {
  test('a foot that is warm has no pulse for it', () => {
    const talk = told('[00:00:10] no pulse in the left foot', '[00:05:00] left foot warm');
    expect(assessment(talk)).toMatch(/Circulation NOT intact in the left foot, at 09:10 \(/);
    expect(assessment(talk)).toMatch(/left foot: no pulse at 09:10 \[/);
  });

  test('the other foot is another', () => {
    const talk = told('[00:00:10] no pulse in the left foot', '[00:05:00] right foot pulse present');
    expect(assessment(talk)).toMatch(/Circulation NOT intact in the left foot \(/);
  });
});

test('what was intact before it was lost is told as before, and not over the radio', () => {
  const talk = told('[00:00:10] c s m intact in all four', '[00:05:00] no pulse in the left foot');
  expect(assessment(talk)).toContain(
    'Circulation NOT intact in the left foot, at 09:15; before that intact at 09:10',
  );
  expect(assessment(talk)).toMatch(/left foot: no pulse at 09:15 \[/);
  expect(talk.radio).not.toMatch(/before that/);
});

test('a foot without a pulse after its tourniquet came off meets the criterion, and while it is on decides nothing', () => {
  const on = '[00:01:00] tourniquet on the left thigh';
  const state = (...lines: readonly string[]) =>
    told(...lines).reckoning.flags.find(({ rule }) => rule === 'ruined-extremity')?.state;
  expect(state(on, '[00:05:00] no pulse in the left foot')).toBe('unknown');
  expect(state(on, '[00:04:00] tourniquet off', '[00:05:00] no pulse in the left foot')).toBe('met');
});
