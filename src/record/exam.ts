// One examination as it is heard: its log, its state, and what the reader keeps in mind between utterances.

import { formatIso } from '../parse/times/index.ts';
import type { Utterance } from '../parse/utterance.ts';
import { type EventFacts, FORMAT, type RecordEvent } from './event.ts';
import { interpret, type Planned } from './interpret.ts';
import { withoutDeniedStrikes } from './not-to-strike.ts';
import { staying } from './patients.ts';
import { type ReadsTalk, readSafely } from './reads-talk.ts';
import { EMPTY, type RecordState } from './state.ts';
import { step } from './step.ts';
import { withRetoldStrikes } from './struck-by-retelling.ts';
import { type WordHeard, withDoubt } from './unsure.ts';

export interface Exam<Context> {
  /** names this device in the log */
  readonly device: string;
  readonly zone: string;
  readonly events: readonly RecordEvent[];
  readonly state: RecordState;
  readonly context: Context;
}

/** An utterance with what the engine that heard it can add. */
export interface HeardUtterance extends Utterance {
  readonly alternatives?: readonly string[];
  readonly engine?: string;
  /** 0 to 1 */
  readonly confidence?: number;
  /** in the order of the text; below a half a word is unsure, and what rests on it is asked about */
  readonly words?: readonly WordHeard[];
  /** why all that is made of it must be asked about, in plain words */
  readonly doubt?: readonly string[];
}

export interface Beginning {
  /** names the device; event and entry identifiers begin with it */
  readonly device: string;
  /** milliseconds since the epoch */
  readonly startedAt: number;
  /** IANA zone or fixed offset in which the record's times are written */
  readonly zone: string;
}

/** An examination in which nothing has been said yet. */
export function beginExam<Context>(
  reader: ReadsTalk<Context>,
  { device, startedAt, zone }: Beginning,
): Exam<Context> {
  const blank = { device, zone, events: [], state: EMPTY, context: reader.begin() };
  const payload = { startedAt: formatIso(startedAt, zone), zone };
  return append(blank, payload.startedAt, () => ({ kind: 'started', payload }));
}

/** The examination with more events, all logged at `time` (ISO 8601 with offset). */
export function append<Context>(exam: Exam<Context>, time: string, ...planned: Planned[]): Exam<Context> {
  let { state } = exam;
  const events = planned.map((one) => {
    const event = eventOf(exam.device, state, time, one);
    state = step(state, event);
    return event;
  });
  return { ...exam, events: [...exam.events, ...events], state };
}

function eventOf(device: string, state: RecordState, time: string, planned: Planned): RecordEvent {
  const seq = (state.lastSeq[device] ?? 0) + 1;
  const id = `${device}-${seq}`;
  const facts: EventFacts = { format: FORMAT, id, device, seq, time };
  return { ...facts, ...planned(id) };
}

/**
 * The examination after one more utterance. The utterance is logged before it is read, with every alternative; should
 * the reader fail on it, the words stand as a note that says so, and the talk goes on. `here` is the number of the record's
 * patient, where it is known.
 */
export function hearUtterance<Context>(
  exam: Exam<Context>,
  reader: ReadsTalk<Context>,
  heard: HeardUtterance,
  here?: number,
): Exam<Context> {
  const heardAt = formatIso(heard.heardAt, heard.zone);
  const logged = logUtterance(exam, heard, heardAt);
  const utterance = `${logged.device}-${logged.state.lastSeq[logged.device] ?? 0}`;
  const { text, zone } = heard;
  const read = readSafely(reader, { text, heardAt: heard.heardAt, zone }, logged.context);
  const { context } = read;
  const others = otherReadings(heard).map((other) => ({
    text: other,
    frames: readSafely(reader, { text: other, heardAt: heard.heardAt, zone }, logged.context).frames,
  }));
  const retold = withRetoldStrikes(withoutDeniedStrikes(read.frames, text), exam.state);
  const frames = withDoubt(staying(retold, here), text, heard, others);
  const iso = (epochMs: number): string => formatIso(epochMs, zone);
  let next: Exam<Context> = { ...logged, context };
  for (const [index, frame] of frames.entries()) {
    next = append(next, heardAt, ...interpret(next.state, frame, { utterance, text, index, heardAt, iso }));
  }
  return next;
}

/**
 * The bundled ear gives one other reading, as good as it can hear; what the two do not both say is asked about. A browser
 * lists readings down to unlikely ones, of which the page takes the best before they come here.
 */
const otherReadings = ({ engine, alternatives = [] }: HeardUtterance): readonly string[] =>
  engine === 'bundled' ? alternatives : [];

function logUtterance<Context>(exam: Exam<Context>, heard: HeardUtterance, heardAt: string): Exam<Context> {
  const payload = { ...heard, heardAt };
  return append(exam, heardAt, () => ({ kind: 'utterance', payload }));
}
