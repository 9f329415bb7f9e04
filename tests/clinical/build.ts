// Builds entries of the record for tests; every patient, time and value here is invented.

import type { Entry, EntryFacts } from '../../src/record/entry.ts';
import type {
  Aspect,
  Care,
  Finding,
  Side,
  Site,
  Statement,
  Topic,
  VitalReading,
} from '../../src/terms/index.ts';

export const START = Date.parse('2026-05-03T14:00:00Z');

/** ISO time so many minutes after the invented start. */
export const minute = (minutes: number): string => new Date(START + minutes * 60_000).toISOString();

/** Epoch milliseconds so many minutes after the invented start. */
export const clock = (minutes: number): number => START + minutes * 60_000;

type Facts = Partial<EntryFacts>;

let made = 0;

/** An entry with a fresh id, confirmed, at the start, unless the facts say otherwise. */
export function entry(statement: Statement, facts: Facts = {}): Entry {
  made += 1;
  const at = facts.at ?? minute(0);
  return { id: `e${made}`, at, heardAt: at, heard: '', state: 'confirmed', ...facts, ...statement };
}

type Slots = Partial<
  Omit<Extract<Statement, { kind: 'finding' }>, 'kind' | 'site' | 'side' | 'finding' | 'present'>
>;

export const found = (
  site: Site,
  side: Side | null,
  finding: Finding,
  facts: Facts = {},
  slots: Slots = {},
): Entry => entry({ kind: 'finding', site, side, finding, present: true, ...slots }, facts);

export const denied = (
  site: Site,
  side: Side | null,
  finding: Finding,
  facts: Facts = {},
  slots: Slots = {},
): Entry => entry({ kind: 'finding', site, side, finding, present: false, ...slots }, facts);

type CsmSlots = Partial<
  Omit<Extract<Statement, { kind: 'csm' }>, 'kind' | 'site' | 'side' | 'aspect' | 'present'>
>;

export const csm = (
  site: 'hand' | 'foot',
  side: Side | null,
  aspect: Aspect,
  present: boolean,
  facts: Facts = {},
  slots: CsmSlots = {},
): Entry => entry({ kind: 'csm', site, side, aspect, present, ...slots }, facts);

export const vital = (reading: VitalReading, facts: Facts = {}): Entry =>
  entry({ kind: 'vital', ...reading }, facts);

export const pulse = (rate: number, at = 0): Entry =>
  vital({ vital: 'pulse', value: { rate } }, { at: minute(at) });

export const breaths = (rate: number, at = 0, quality?: readonly string[]): Entry =>
  vital({ vital: 'respirations', value: { rate, ...(quality ? { quality } : {}) } }, { at: minute(at) });

export const pressure = (systolic: number, diastolic: number | null, at = 0): Entry =>
  vital({ vital: 'blood-pressure', value: { systolic, diastolic } }, { at: minute(at) });

export const saturation = (percent: number, onOxygen?: boolean, at = 0): Entry =>
  vital(
    { vital: 'oxygen-saturation', value: { percent, ...(onOxygen === undefined ? {} : { onOxygen }) } },
    { at: minute(at) },
  );

export const celsius = (degrees: number, at = 0): Entry =>
  vital({ vital: 'temperature', value: { celsius: degrees } }, { at: minute(at) });

export const gcs = (eye: number | 'NT', verbal: number | 'NT', motor: number | 'NT', at = 0): Entry =>
  vital({ vital: 'gcs', value: { eye, verbal, motor } }, { at: minute(at) });

export const avpu = (letter: 'A' | 'V' | 'P' | 'U', orientation?: number, at = 0): Entry =>
  vital(
    {
      vital: 'responsiveness',
      value: { avpu: letter, ...(orientation === undefined ? {} : { orientation }) },
    },
    { at: minute(at) },
  );

export const age = (years: number): Entry =>
  entry({ kind: 'history', topic: 'age', text: `${years}`, years });

export const told = (topic: Topic, text: string, present?: boolean, facts: Facts = {}): Entry =>
  entry({ kind: 'history', topic, text, ...(present === undefined ? {} : { present }) }, facts);

export const cared = (care: Care, site?: Site, side?: Side | null, at = 0, text?: string): Entry =>
  entry(
    {
      kind: 'care',
      care,
      ...(site === undefined ? {} : { site }),
      ...(side === undefined ? {} : { side }),
      ...(text === undefined ? {} : { text }),
    },
    { at: minute(at) },
  );

export const visit = (site: Site, side: Side | null): Entry => entry({ kind: 'visit', site, side });

/** Circulation, sensation and motion intact in both hands and both feet: twelve entries. */
export const csmAllFour = (at = 0): readonly Entry[] =>
  (['hand', 'foot'] as const).flatMap((site) =>
    (['left', 'right'] as const).flatMap((side) =>
      (['circulation', 'sensation', 'motion'] as const).map((aspect) =>
        csm(site, side, aspect, true, { at: minute(at) }),
      ),
    ),
  );
