// A record handed to this device becomes a record here, and is said to be taken only once it is on this disk; one that was
// handed on says in its own log who writes it now.

import { type Signal, signal } from '@preact/signals';
import { createPass, type Line, type Offer, type Pass, type Word } from '../../../link/index.ts';
import { handOver } from '../../../record/index.ts';
import { newName } from '../../../record/store/index.ts';
import { type Desk, done, passOn, setRecord, timeIn, trouble } from '../../desk/index.ts';
import { openKept } from '../../records/restore.ts';
import { summaryOf } from '../../records/summary.ts';
import { whoIs } from '../../records/who.ts';
import type { Member } from './member.ts';
import { takeOver } from './take-over.ts';

export interface Handing {
  readonly offers: Signal<readonly Offer[]>;
  /** who was offered the open record and has not answered yet, by name; null for nobody */
  readonly offeredTo: Signal<string | null>;
  offer(to: string, name: string): Promise<void>;
  accept(offer: Offer, name: string): Promise<void>;
  decline(offer: Offer): void;
  /** notes from the post's word what was taken over while this device did not hear it */
  learn(word: Word): void;
  end(): void;
}

interface Parts {
  readonly desk: Desk;
  readonly member: Member;
  readonly key: CryptoKey;
  readonly line: Line;
  /** sends the record with this name to the post from now on */
  readonly share: (record: string) => Promise<void>;
  readonly nameOf: (device: string) => string;
}

export function createHanding({ desk, member: { code }, key, line, share, nameOf }: Parts): Handing {
  const offers = signal<readonly Offer[]>([]);
  const offeredTo = signal<string | null>(null);

  /** Logs in the record that another device writes it now; the record need not be the open one. */
  const logPassed = async (record: string, to: string, name: string): Promise<void> => {
    const reader = desk.reader.value;
    const open = desk.record.value;
    if (open?.facts.id === record) {
      if (!open.exam.state.handover.some((step) => step.step === 'passed' && step.to === to))
        passOn(desk, { step: 'passed', to, name });
      return;
    }
    if (reader === null || open === null) return;
    // Another record is open: that one is put back in its place at once.
    await openKept(desk, reader, record);
    const passed = desk.record.value;
    if (
      passed?.facts.id === record &&
      !passed.exam.state.handover.some((step) => step.step === 'passed' && step.to === to)
    )
      setRecord(desk, {
        ...passed,
        exam: handOver(passed.exam, { step: 'passed', to, name }, timeIn(passed, desk.clock())),
      });
    setRecord(desk, open);
  };

  const pass: Pass = createPass({
    incident: code.incident,
    device: code.device,
    key,
    line,
    newId: newName,
    offered: (offer) => {
      offers.value = [
        ...offers.value.filter(({ from, facts }) => from !== offer.from || facts.id !== offer.facts.id),
        offer,
      ];
      desk.notice.value = done(
        `${nameOf(offer.from)} offers you a record: ${offer.who}. Take it over under “Team”.`,
      );
    },
    settled: (record, to, how) => {
      offeredTo.value = null;
      const name = nameOf(to);
      if (how === 'declined') {
        desk.notice.value = trouble(`${name} did not take the record over; it stays with you.`);
        return;
      }
      desk.notice.value = done(`${name} has taken the record over and writes it from here on.`);
      void logPassed(record, to, name);
    },
  });

  return {
    offers,
    offeredTo,
    offer: async (to, name) => {
      const record = desk.record.value;
      if (record === null) return;
      await desk.keeper.settled();
      const { facts, exam } = desk.record.value ?? record;
      offeredTo.value = name;
      const offered = await pass.offer(to, { facts, who: whoIs(summaryOf(record)), events: exam.events });
      if (offered.kind === 'shown') return;
      offeredTo.value = null;
      desk.notice.value = trouble(offered.why);
    },
    accept: async (offer, name) => {
      const reader = desk.reader.value;
      if (reader === null) return;
      const fault = await takeOver(desk, reader, offer, name);
      if (fault !== null) {
        desk.notice.value = trouble(
          `The record could not be taken over: ${fault}. Nothing was changed here.`,
        );
        return;
      }
      const { facts } = offer;
      await desk.keeper.settled();
      if (desk.keeper.unkept(facts.id) !== null) {
        desk.notice.value = trouble(
          'The record is not on this disk yet, so the other device still counts as writing it.',
        );
        return;
      }
      await share(facts.id);
      offers.value = offers.value.filter(({ id }) => id !== offer.id);
      pass.settle(offer, 'taken');
    },
    decline: (offer) => {
      offers.value = offers.value.filter(({ id }) => id !== offer.id);
      pass.settle(offer, 'declined');
    },
    learn: ({ passed }) => {
      const open = desk.record.value;
      for (const { record, to, name } of passed)
        if (record === open?.facts.id) void logPassed(record, to, name);
    },
    end: () => pass.end(),
  };
}
