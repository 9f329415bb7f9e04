// Plays a talk into a record of its own, at some pace, until it ends or is stopped.

import { batch, type Signal, signal } from '@preact/signals';
import type { HeardUtterance } from '../../record/index.ts';
import type { Talk } from '../../record/talk/index.ts';
import {
  beginRecord,
  type Desk,
  type OpenRecord,
  type RecordKind,
  setRecord,
  type TalkReader,
} from '../desk/index.ts';
import { type Cast, castOf, hearInCast, inMind } from './cast.ts';
import { due, type Pace, positionAfter } from './pace.ts';

export interface Playing {
  readonly title: string;
  readonly state: 'playing' | 'paused' | 'ended';
  readonly pace: Pace;
  /** ms of the talk's own time */
  readonly position: number;
  readonly length: number;
  /** the record it plays into */
  readonly record: string;
  /** the record that was open before, to go back to */
  readonly before: OpenRecord | null;
}

export interface Player {
  readonly playing: Signal<Playing | null>;
  start(talk: Talk, what: { readonly title: string; readonly kind: RecordKind; readonly pace: Pace }): void;
  setPace(pace: Pace): void;
  pause(): void;
  resume(): void;
  /** ends the play; what was said so far stays in its record */
  stop(): void;
}

/** How often the talk moves on, ms; often enough that 60× still looks like talk. */
const TICK = 200;

/** A player for the desk; `reader` is asked for only when a play starts. */
export function createPlayer(desk: Desk): Player {
  const playing = signal<Playing | null>(null);
  let talk: Talk | null = null;
  let said = 0;
  let cast: Cast | null = null;
  let timer: ReturnType<typeof setInterval> | null = null;
  let moved = 0;

  const stopTimer = (): void => {
    if (timer !== null) clearInterval(timer);
    timer = null;
  };
  const startTimer = (): void => {
    stopTimer();
    moved = desk.clock();
    timer = setInterval(move, TICK);
  };

  function move(): void {
    const [now, reader, record] = [playing.value, desk.reader.value, desk.record.value];
    // Where another record was opened meanwhile, nothing more may be said into it.
    if (now === null || talk === null || reader === null || record?.facts.id !== now.record) {
      stop();
      return;
    }
    const wall = desk.clock();
    const position = positionAfter(now.position, wall - moved, now.pace, now.length);
    moved = wall;
    const next = due(talk.utterances, talk.startedAt, said, position);
    said += next.length;
    const state = said >= talk.utterances.length ? 'ended' : now.state;
    batch(() => {
      hearAll(reader, record, next, (talk?.startedAt ?? 0) + position);
      playing.value = { ...now, position, state, record: desk.record.value?.facts.id ?? now.record };
    });
    if (state === 'ended') stopTimer();
  }

  /** Says some utterances at their own times; the record's clock then stands at `at`, epoch ms. */
  function hearAll(
    reader: TalkReader,
    record: OpenRecord,
    utterances: readonly HeardUtterance[],
    at: number,
  ): void {
    // A hand may have changed the record between two ticks: it goes on from what stands on the screen.
    const before: Cast =
      cast === null ? castOf(record) : { ...cast, records: new Map(cast.records).set(cast.current, record) };
    const after = utterances.reduce(
      (now, one) => hearInCast(desk, reader, now, { ...one, engine: 'file' }),
      before,
    );
    cast = after;
    for (const [patient, one] of after.records)
      if (patient !== after.current && before.records.get(patient) !== one) desk.keeper.keep(one);
    const moved = { ...inMind(after), ahead: at - desk.clock() };
    if (utterances.length > 0) setRecord(desk, moved);
    else desk.record.value = moved;
  }

  function stop(): void {
    stopTimer();
    talk = null;
    playing.value = null;
  }

  return {
    playing,
    start: (given, { title, kind, pace }) => {
      const reader = desk.reader.value;
      if (reader === null) return;
      const before = playing.value?.before ?? desk.record.value;
      stop();
      talk = given;
      said = 0;
      const { startedAt, zone, utterances } = given;
      const record = beginRecord(desk, reader, { kind, title, startedAt, zone });
      const length = Math.max(0, ...utterances.map(({ heardAt }) => heardAt - startedAt));
      cast = castOf(record);
      setRecord(desk, record);
      playing.value = { title, state: 'playing', pace, position: 0, length, record: record.facts.id, before };
      startTimer();
      move();
    },
    setPace: (pace) => {
      if (playing.value === null) return;
      move();
      if (playing.value !== null) playing.value = { ...playing.value, pace };
      if (playing.value?.state === 'playing') move();
    },
    pause: () => {
      stopTimer();
      if (playing.value?.state === 'playing') playing.value = { ...playing.value, state: 'paused' };
    },
    resume: () => {
      if (playing.value?.state !== 'paused') return;
      playing.value = { ...playing.value, state: 'playing' };
      startTimer();
    },
    stop,
  };
}
