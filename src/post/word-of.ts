// The post's word to one phone: what is here of it, what is asked of it, who writes what it handed on, and who else is there.

import type { Mate, Question, Word } from '../link/index.ts';
import type { Devices } from './devices.ts';
import type { Known } from './known.ts';
import type { Records } from './records.ts';

/** Heard of within this time, a device is shown to the others as being there, ms; our choice, no source. */
const LATELY = 5 * 60_000;

export interface WordParts {
  readonly devices: Devices;
  readonly known: ReadonlyMap<string, Known>;
  readonly records: Records;
  readonly questions: readonly Question[];
  /** epoch ms, the post's clock */
  readonly now: number;
}

/** Null for a device that is not of this incident, was put out, or was never heard of. */
export function wordOf(device: string, { devices, known, records, questions, now }: WordParts): Word | null {
  const listed = devices.get(device);
  const one = known.get(device);
  if (listed === null || listed.outAt !== null || one === undefined) return null;
  const { upTo, hash, beyond, spoiled, broken } = one.account.standing();
  const lately = (at: number | null): boolean => at !== null && now - at < LATELY;
  return {
    v: 1,
    install: listed.install ?? '',
    upTo,
    hash,
    beyond,
    spoiled: spoiled.map(({ seq }) => seq),
    troubles: broken === null ? [] : [`message ${broken.seq} does not follow the one before it`],
    clock: now,
    questions: questions.filter(({ id, record }) => {
      const there = records.get(record);
      return there?.writer === device && !there.asked.has(id);
    }),
    passed: records
      .all()
      .filter(({ writer, devices: wrote }) => writer !== device && wrote.has(device))
      .map(({ facts, writer }) => ({
        record: facts.id,
        to: writer,
        name: devices.get(writer)?.name ?? writer,
      })),
    mates: devices
      .all()
      .filter(
        (mate) =>
          mate.device !== device && mate.outAt === null && lately(known.get(mate.device)?.heardAt ?? null),
      )
      .map(({ device: id, name }): Mate => ({ device: id, name })),
  };
}
