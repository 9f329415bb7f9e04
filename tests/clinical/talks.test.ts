// Three short invented examinations, from the words to the reckoning.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { leftText, type Reckoning, reckon } from '../../src/clinical/index.ts';
import { readTalk } from '../../src/record/talk/index.ts';
import { endOf, examine } from '../../src/replay/examine.ts';
import { realReader } from '../talk-case.ts';

const reader = realReader();

function reckoned(name: string): Reckoning {
  const text = readFileSync(new URL(`./talks/${name}.talk`, import.meta.url), 'utf8');
  const talk = readTalk(text, { startedAt: 0, zone: 'UTC' });
  if (talk.kind === 'error') throw new Error(`${name}.talk, line ${talk.line}: ${talk.why}`);
  return reckon(examine(reader, talk).state.entries, { now: endOf(talk) + 60_000 });
}

const met = ({ flags }: Reckoning): readonly string[] =>
  flags.filter((flag) => flag.state === 'met').map((flag) => flag.rule);
const patterns = (of: Reckoning): readonly string[] => of.patterns.map((pattern) => pattern.pattern);

describe('a burned child', () => {
  const child = reckoned('burned-child');
  it('is sized by both methods, the chart for the age leading', () => {
    expect(child.burns?.text).toBe('burns: 18 % by rule of nines, 16 % by Lund-Browder');
    expect(child.scores.burnPercent).toBe(16);
  });
  it('has the pressure of its age and a hand without a pulse', () => {
    expect(met(child)).toEqual(['ruined-extremity', 'systolic-child']);
    expect(patterns(child)).toEqual(['limb-pulse-lost']);
    expect(child.due.stability).toBe('unstable');
  });
});

describe('a head injury', () => {
  const head = reckoned('falling-gcs');
  it('shows its falling score and widening pulse pressure as trends with their numbers', () => {
    expect(head.patterns.map((pattern) => pattern.text)).toEqual([
      'trend: pulse pressure 46 to 100 (122/76 to 170/70), pulse down 92 to 52, breathing irregular',
      'trend: GCS 15 to 9, 14:00 to 14:15',
    ]);
  });
  it('no longer follows commands, and has one pupil that does not react', () => {
    expect(met(head)).toEqual(expect.arrayContaining(['skull-deformity', 'commands']));
    expect(head.scoreCards.find((card) => card.score === 'gcs-pupils')?.value).toBe(8);
  });
  it('counts the minutes since the fall', () => {
    expect(head.clocks.find((clock) => clock.clock === 'injury')?.minutes).toBe(36);
  });
});

describe('an elderly person on a blood thinner who fell', () => {
  const elder = reckoned('elder-fall');
  it('meets what age, pressure, bones, spine and medication decide', () => {
    expect(met(elder)).toEqual([
      'spinal-injury-with-loss',
      'proximal-long-bones',
      'systolic-65-up',
      'low-fall-head',
      'anticoagulant',
    ]);
  });
  it('does not have a pulseless limb for a cold foot', () => {
    expect(elder.flags.find((flag) => flag.rule === 'ruined-extremity')?.state).toBe('unknown');
  });
  it('is asked to recheck the splinted leg, and told what is left', () => {
    expect(elder.rechecks.map((recheck) => recheck.end)).toEqual([{ site: 'foot', side: 'left' }]);
    // That she hit her head is no look at it.
    expect(leftText(elder)).toMatch(
      /^Left to examine: skull, .*jaw, left shoulder, right upper arm, and 7 more\./,
    );
  });
});
