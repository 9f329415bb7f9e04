// What the last words became, told to a screen reader whichever panel or sheet is open; nobody sees it.

import { useState } from 'preact/hooks';
import { sentenceText } from '../entries/sentence.ts';
import { useTools } from '../frame/tools.ts';
import { type Became, lastSaid, type Outcome } from './became.ts';

export const FALLEN_WORDS = {
  struck: 'Struck',
  restored: 'Stands again',
  confirmed: 'Confirmed',
} as const;

/** Stands outside the panels, which may be hidden, and on every sheet, which takes the page behind it out of hearing. */
export function LastSaid() {
  const record = useTools().desk.record.value;
  const [latest] = record === null ? [] : lastSaid(record.exam.events, record.exam.state, 1);
  // What stood already when this was put here is no news.
  const [before] = useState(latest?.id);
  return (
    <p class="only-heard last-said" role="status">
      {latest !== undefined && latest.id !== before && <span key={latest.id}>{spokenOutcome(latest)}</span>}
    </p>
  );
}

const spokenOutcome = ({ outcomes }: Became): string =>
  outcomes.length === 0 ? 'Nothing to record.' : outcomes.flatMap(spoken).join('. ');

function spoken(outcome: Outcome): readonly string[] {
  switch (outcome.kind) {
    case 'entered':
      return [sentenceText(outcome.entry)];
    case 'corrected':
      return outcome.now.map((entry) => `Now: ${sentenceText(entry)}`);
    case 'struck':
    case 'restored':
    case 'confirmed':
      return outcome.entries.map((entry) => `${FALLEN_WORDS[outcome.kind]}: ${sentenceText(entry)}`);
    case 'command':
      return [];
  }
}
