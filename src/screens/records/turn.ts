// Turns to another patient of the same incident, by voice or by touch; who is in mind is said at the turn.

import { batch, effect, untracked } from '@preact/signals';
import { fileExam, turnTo } from '../../record/index.ts';
import {
  beginRecord,
  type Desk,
  done,
  type OpenRecord,
  sayWaiting,
  setRecord,
  type TurnedTo,
  timeIn,
  trouble,
} from '../desk/index.ts';
import type { Tools } from '../frame/tools.ts';
import { reopen } from './close.ts';
import { openKept } from './restore.ts';
import { type Shown, shownOf, summaryOf } from './summary.ts';
import { whoIs } from './who.ts';

/** The records of the open record's incident, the first patient first; the open one as it stands now. */
export async function patientsHere(desk: Desk): Promise<readonly Shown[]> {
  const here = desk.record.value;
  if (here === null) return [];
  const mine: Shown = { facts: here.facts, summary: summaryOf(here) };
  const others = (await desk.keeper.list()).records
    .map(shownOf)
    .filter(({ facts, summary }) => facts.id !== here.facts.id && summary.incident === mine.summary.incident);
  return [mine, ...others].toSorted((a, b) => a.summary.patient - b.summary.patient);
}

/** How long the turn is told over the page, ms; our choice, no source. */
const SHOWN = 4000;

/** Follows the turns that the talk asks for. */
export function followTurns(tools: Tools): void {
  let before: { readonly incident: string; readonly patient: number } | null = null;
  effect(() => {
    const meant = tools.desk.turning.value;
    // What the turn looks at must not start it again.
    if (meant !== null) untracked(() => void turn(meant));
  });

  async function turn(meant: TurnedTo): Promise<void> {
    const { desk } = tools;
    const here = desk.record.peek();
    const current = here === null ? null : summaryOf(here);
    try {
      await turnToPatient(tools, meant, before?.incident === current?.incident ? before?.patient : undefined);
    } catch {
      desk.notice.value = trouble('The other record could not be opened. What is said goes on in this one.');
    }
    const now = desk.record.peek();
    if (current !== null && now?.facts.id !== here?.facts.id) before = current;
    batch(() => {
      desk.turning.value = null;
      sayWaiting(desk);
    });
  }
}

/** Opens or begins the record of the patient meant, or opens the record itself. */
async function turnToPatient(tools: Tools, meant: TurnedTo, before: number | undefined): Promise<void> {
  const { desk, player } = tools;
  const [here, reader] = [desk.record.value, desk.reader.value];
  if (reader === null) return;
  if (typeof meant === 'object') {
    player.stop();
    await reopen(desk, reader, meant.record);
    // Where it could not be read, that was told.
    if (desk.record.value?.facts.id === meant.record) announce(tools, true);
    return;
  }
  if (here === null) return;
  const patients = await patientsHere(desk);
  const current = summaryOf(here).patient;
  const turned = turnTo(
    {
      known: patients.map(({ summary }) => summary.patient),
      current,
      ...(before === undefined ? {} : { before }),
    },
    meant,
  );
  if (turned.kind === 'no-such-patient') {
    desk.notice.value = trouble(turned.why);
    return;
  }
  if (turned.patient === current) return announce(tools);
  player.stop();
  const known = patients.find(({ summary }) => summary.patient === turned.patient);
  if (known !== undefined) await openKept(desk, reader, known.facts.id);
  else setRecord(desk, beginPatient(desk, here, turned.patient));
  announce(tools);
}

/** A record for one more patient of the incident of `beside`, at the same place. */
export function beginPatient(desk: Desk, beside: OpenRecord, patient: number): OpenRecord {
  const reader = desk.reader.value;
  if (reader === null) throw new Error('no record is begun before the reader is there');
  const { incident, place } = summaryOf(beside);
  const startedAt = timeIn(beside, desk.clock());
  const { kind, title } = beside.facts;
  const begun = beginRecord(desk, reader, { kind, title, startedAt, zone: beside.exam.zone });
  return { ...begun, exam: fileExam(begun.exam, { incident, patient, place }, startedAt) };
}

/** Says who is in mind now, on the screen and aloud where a voice is on the device; with the time, where it may be of another incident. */
export function announce({ desk, speaker }: Tools, withTime = false): void {
  const record = desk.record.value;
  if (record === null) return;
  const { startedAt } = record.facts;
  const time = withTime ? `, ${startedAt.slice(0, 10)}, ${startedAt.slice(11, 16)}` : '';
  const who = `${whoIs(summaryOf(record))}${time}`;
  const notice = done(`Now: ${who}.`);
  desk.notice.value = notice;
  // On a phone it lies over the head of the page, where the patient in mind stands anyway.
  setTimeout(() => {
    if (desk.notice.peek() === notice) desk.notice.value = null;
  }, SHOWN);
  speaker.speak(`Now: ${who}`);
}
