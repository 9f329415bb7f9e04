// What the page holds: the open record, the reader, and what was said before the reader was there.

import { type Signal, signal } from '@preact/signals';
import type { PatientMeant } from '../../parse/index.ts';
import type { Clip, Role, Shelf } from '../../record/store/index.ts';
import type { Door } from '../records/door.ts';
import type { Keeper } from '../records/keeper.ts';
import { type Notice, trouble } from './notice.ts';
import type { OpenRecord } from './open-record.ts';
import type { TalkReader } from './reader.ts';
import type { Said } from './say.ts';

/** What is said before the reader is built waits here, with the time it was said at. */
export interface Waiting extends Said {
  readonly text: string;
  readonly at: number;
}

/** Where the sound of an utterance goes once its words are in a record. */
export type KeepSound = (record: string, utterance: string, sound: Clip) => void;

/** Another patient of the incident, or a record by its identifier. */
export type TurnedTo = PatientMeant | { readonly record: string };

export type Aside = (heard: { readonly text: string; readonly engine: string }) => boolean;
/** A record of which not everything could be read. */
export interface Damage {
  readonly record: string;
  /** what is wrong, in sentences */
  readonly why: string;
  /** rows that lie on the disk and cannot be read */
  readonly rows: number;
}

export interface Desk {
  readonly record: Signal<OpenRecord | null>;
  readonly reader: Signal<TalkReader | null>;
  readonly waiting: Signal<readonly Waiting[]>;
  readonly notice: Signal<Notice | null>;
  /**
   * while the radio is in use: what was heard then is handed here and not read as findings. True where the words were
   * taken; false lets them go their usual way.
   */
  readonly aside: Signal<Aside | null>;
  /** wall clock, epoch ms; moves on by itself */
  readonly wall: Signal<number>;
  /** the patient, or the kept record, that was just turned to; until that record is open, what is said waits */
  readonly turning: Signal<TurnedTo | null>;
  /** whether this page writes or follows another one */
  readonly role: Signal<Role>;
  /** what is wrong with the open record, or null */
  readonly damage: Signal<Damage | null>;
  readonly shelf: Shelf;
  readonly door: Door;
  readonly keeper: Keeper;
  readonly keepSound: KeepSound;
  /** names this page in the log: two pages never share one, so that their events never share a number */
  readonly device: string;
  readonly zone: string;
  /** the wall clock now, epoch ms */
  readonly clock: () => number;
  /** a new name for a record */
  readonly newId: () => string;
}

export interface DeskParts {
  /** without it the desk is the only one */
  readonly role?: Signal<Role>;
  /** without it no sound is kept */
  readonly keepSound?: KeepSound;
  readonly shelf: Shelf;
  readonly door: Door;
  readonly keeper: Keeper;
  readonly device: string;
  /** the place's time zone, asked for once and only when it is first needed: a browser takes long to tell it */
  readonly zone: () => string;
  readonly clock: () => number;
  readonly newId: () => string;
}

/** An empty desk. */
export function createDesk({ zone, ...parts }: DeskParts): Desk {
  let known: string | null = null;
  return {
    keepSound: () => undefined,
    ...parts,
    get zone() {
      known ??= zone();
      return known;
    },
    role: parts.role ?? signal<Role>('writes'),
    record: signal(null),
    reader: signal(null),
    waiting: signal([]),
    notice: signal(null),
    aside: signal(null),
    damage: signal(null),
    turning: signal(null),
    wall: signal(parts.clock()),
  };
}

/** Puts the record in place of the one that was open, and keeps what is new in it. */
export function setRecord(desk: Desk, record: OpenRecord): void {
  if (desk.role.value === 'follows') {
    desk.notice.value = trouble(
      'Not done: this page follows another one that records. Take the recording over first.',
    );
    return;
  }
  desk.record.value = record;
  desk.wall.value = desk.clock();
  desk.keeper.keep(record);
}
