// Where the radio work begins: which report, in which order, how fast, and what was sent so far.

import type { Signal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { RADIO_ORDERS, type RadioOrder } from '../../handoff/index.ts';
import { formatIso } from '../../parse/times/index.ts';
import type { ReportPart } from '../../record/index.ts';
import { clock, dayOf } from '../../timeline/index.ts';
import { useTools, useWorked } from '../frame/tools.ts';
import { PaceControl } from './PaceControl.tsx';
import { timeFor, wordCount } from './pace.ts';
import { type MadeReport, makeReport, REPORT_NAMES, reportBefore, toldUntil } from './reports.ts';
import { SentList } from './SentList.tsx';

const ORDER_NAMES: Readonly<Record<RadioOrder, string>> = {
  atmist: 'ATMIST',
  'imist-ambo': 'IMIST-AMBO',
  sbar: 'SBAR',
};
const ORDERS = Object.keys(RADIO_ORDERS) as readonly RadioOrder[];

/** The radio order of the same name as that of the report panel; null where the radio has none. */
const radioOrder = (name: string): RadioOrder | null =>
  ORDERS.find((order) => ORDER_NAMES[order] === name) ?? null;

interface Props {
  readonly pace: Signal<number>;
  readonly read: (report: MadeReport) => void;
  readonly check: () => void;
  readonly questions: () => void;
}

export function Choose({ pace, read, check, questions }: Props) {
  const tools = useTools();
  const { desk, reading } = tools;
  const { report } = useWorked();
  const [order, setOrder] = useState<RadioOrder>('atmist');
  // As it was chosen for the report, or as it is said now.
  const chosen = radioOrder(tools.order.value);
  useEffect(() => {
    if (chosen !== null) setOrder(chosen);
  }, [chosen]);
  const exam = desk.record.value?.exam;
  const steps = exam?.state.handover ?? [];
  const input = report.value;
  const day = dayOf(input.startedAt);
  const told = toldUntil(steps);
  const made = formatIso(input.now, exam?.zone ?? desk.zone);
  const make = (part: Exclude<ReportPart, 'again'>): MadeReport =>
    makeReport(part, input, {
      order,
      since: told ?? input.startedAt,
      before: reportBefore(exam?.events ?? []),
      made,
    });
  const offered: readonly MadeReport[] = [
    make('script'),
    ...(told === null ? [] : [make('update')]),
    make('details'),
  ];
  // "Next piece" begins with the report, as it stands when that is said.
  const begin = useRef(() => {});
  begin.current = () => {
    const [script] = offered;
    if (script !== undefined && script.pieces.length > 0) read(script);
  };
  useEffect(() => {
    reading.value = { next: () => begin.current(), back: () => {}, again: () => {} };
    return () => {
      reading.value = null;
    };
  }, [reading]);
  const open = steps.filter(
    ({ id, step }) =>
      step === 'question' && !steps.some((one) => one.step === 'answer' && one.question === id),
  ).length;
  return (
    <>
      <fieldset>
        <legend>In the order of</legend>
        <div class="choices thirds">
          {ORDERS.map((one) => (
            <button
              key={one}
              type="button"
              class="button"
              aria-pressed={order === one}
              onClick={() => setOrder(one)}
            >
              {ORDER_NAMES[one]}
            </button>
          ))}
        </div>
      </fieldset>
      {offered
        .filter(({ pieces }) => pieces.length > 0)
        .map((one) => (
          <button
            key={one.part}
            type="button"
            class={`button wide ${one.part === 'details' ? '' : 'primary'}`}
            onClick={() => read(one)}
          >
            {REPORT_NAMES[one.part]}
            {one.part === 'update' && told !== null ? ` since ${clock(told, day)}` : ''}:{' '}
            {lengthOf(one, pace.value)}
          </button>
        ))}
      <div class="choices even">
        <button type="button" class="button big" onClick={check}>
          Check what they read back
        </button>
        <button type="button" class="button big" onClick={questions}>
          Their questions{open === 0 ? '' : ` (${open} open)`}
        </button>
      </div>
      <p class="small-print">
        By voice: “show SBAR” and the like choose the order, “next piece” begins the report, “close the sheet”
        ends it.
      </p>
      <PaceControl pace={pace} />
      <SentList steps={steps} day={day} />
    </>
  );
}

/** `4 pieces, about 90 seconds` */
function lengthOf({ pieces }: MadeReport, pace: number): string {
  const words = pieces.reduce((sum, { text }) => sum + wordCount(text), 0);
  const seconds = Math.max(5, Math.round(timeFor(words, pace) / 5000) * 5);
  const time = seconds < 120 ? `${seconds} seconds` : `${Math.round(seconds / 60)} minutes`;
  return `${pieces.length} ${pieces.length === 1 ? 'piece' : 'pieces'}, about ${time}`;
}
