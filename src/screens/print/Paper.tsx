// The record as it stands on paper.

import { type PrintedRecord, UNCONFIRMED_SIGN, type VitalChart } from '../../handoff/index.ts';
import type { KeptStep } from '../../record/index.ts';
import { dayOf } from '../../timeline/index.ts';
import type { RecordKind } from '../desk/index.ts';
import { CAUTION } from '../frame/caution-words.ts';
import { SentList } from '../reader/SentList.tsx';
import { Chart } from './Chart.tsx';
import { Table } from './Table.tsx';

interface Props {
  readonly printed: PrintedRecord;
  readonly charts: readonly VitalChart[];
  readonly id: string;
  readonly kind: RecordKind;
  /** null where none could be worked out */
  readonly hash: string | null;
  readonly steps: readonly KeptStep[];
  /** how many events the log has */
  readonly events: number;
}

/** `2026-05-03, 14:02 (UTC-06:00)` */
const moment = (iso: string): string =>
  `${iso.slice(0, 10)}, ${iso.slice(11, 16)} (UTC${iso.slice(19).replace(/^\.\d+/, '')})`;

export function Paper({ printed, charts, id, kind, hash, steps, events }: Props) {
  const { patient, startedAt, made, standing, unconfirmed, sections } = printed;
  return (
    <article>
      <header>
        <h1>Examination record</h1>
        {kind !== 'live' && (
          <p class="paper-kind">
            {kind === 'invented' ? 'INVENTED EXAMINATION: no such patient' : 'Read from a file'}
          </p>
        )}
        <div class="paper-who">
          <p>
            {patient.map(({ text }) => (
              <span key={text}>
                <b>{text}</b>{' '}
              </span>
            ))}
          </p>
          <p>
            Began {moment(startedAt)}. This page was made at {made}.
          </p>
          <p>
            {standing} entries stand;{' '}
            {unconfirmed === 0 ? 'all are confirmed' : `${unconfirmed} of them are UNCONFIRMED`}.{' '}
            {UNCONFIRMED_SIGN} marks what is unconfirmed: heard, and confirmed by nobody. Left and right are
            the patient’s.
          </p>
          <p>{CAUTION}</p>
        </div>
      </header>
      {sections.map(({ title, lines, tables, charts: hasCharts }) => (
        <section key={title}>
          <h2>{title}</h2>
          {lines.map(({ text }, index) => (
            <p key={`${index}-${text}`}>{text}</p>
          ))}
          {tables.map((table) => (
            <Table key={table.title} table={table} />
          ))}
          {hasCharts && charts.length > 0 && (
            <div class="paper-charts">
              {charts.map((chart) => (
                <Chart key={chart.vital} chart={chart} />
              ))}
            </div>
          )}
        </section>
      ))}
      {steps.some(({ step }) => step !== 'aside') && (
        <section>
          <h2>Over the radio</h2>
          <SentList steps={steps} day={dayOf(startedAt)} />
        </section>
      )}
      <section class="paper-end">
        <p class="paper-sign">
          <span>Handed over by</span> <span>Taken over by</span> <span>Date and time</span>
        </p>
        <p>
          Record {id}.{' '}
          {hash === null
            ? 'No digest could be worked out in this browser.'
            : `SHA-256 of its ${events} events, each chained to the one before: ${hash}`}
        </p>
      </section>
    </article>
  );
}
