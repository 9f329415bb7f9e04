// What was sent and when, and how each read-back went; the log has the words of each.

import type { KeptStep } from '../../record/index.ts';
import { clock, type Day } from '../../timeline/index.ts';
import { REPORT_NAMES } from './reports.ts';

const COPIED = {
  symbols: 'Shown as QR symbols',
  file: 'Saved as a file',
  share: 'Shared as a file',
  fhir: 'Saved as HL7 FHIR',
} as const;

/** One line for a step; null for what is shown elsewhere. */
function lineFor(step: KeptStep): string | null {
  switch (step.step) {
    case 'sent':
      return `${REPORT_NAMES[step.part]}, piece ${step.piece} of ${step.of}${step.by === 'device' ? ', read by the device' : ''}`;
    case 'read-back': {
      const wrong = step.rows.filter(({ kind }) => kind === 'differs').length;
      const missing = step.rows.filter(({ kind }) => kind === 'missing').length;
      return wrong + missing === 0
        ? 'Read back right'
        : `Read back: ${[wrong === 0 ? '' : `${wrong} wrong`, missing === 0 ? '' : `${missing} missing`].filter((part) => part !== '').join(', ')}`;
    }
    case 'question':
      return `They asked: “${step.text}”`;
    case 'answer':
      return `Answered: “${step.text}”`;
    case 'passed':
      return `Handed to ${step.name}, who writes from here on`;
    case 'taken':
      return `Taken over from ${step.name}`;
    case 'copied':
      return `${COPIED[step.by]}${step.sealed ? ', under a passphrase' : ', open to whoever has it'}`;
    case 'received':
      return `Received ${step.by === 'symbols' ? 'by QR symbols' : 'as a file'}: ${step.events} events`;
    case 'aside':
      return null;
  }
}

export function SentList({ steps, day }: { readonly steps: readonly KeptStep[]; readonly day: Day }) {
  const lines = steps.flatMap((step) => {
    const text = lineFor(step);
    return text === null ? [] : [{ id: step.id, at: step.at, text }];
  });
  if (lines.length === 0) return <p class="empty">Nothing has been sent yet.</p>;
  return (
    <section aria-label="Sent so far">
      <h3>Sent so far</h3>
      <ol class="plain-list">
        {lines.toReversed().map(({ id, at, text }) => (
          <li key={id} class="moment">
            <span class="when">{clock(at, day)}</span> <span>{text}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
