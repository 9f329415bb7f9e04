// Entries that are at odds with each other, each as a question that one press settles.

import type { ComponentChildren } from 'preact';
import type { Conflict } from '../../clinical/index.ts';
import type { Entry } from '../../record/index.ts';
import { clock, dayOf } from '../../timeline/index.ts';
import { strike } from '../desk/index.ts';
import { useTools, useWorked } from '../frame/tools.ts';
import { EntryLine } from './EntryLine.tsx';
import { sentenceText } from './sentence.ts';
import { nameOf } from './settled.ts';

export function Questions() {
  const { settled } = useTools();
  const { readAloud } = settled;
  const { reckoning } = useWorked();
  const conflicts = reckoning.value.conflicts.filter((one) => !settled.isSettled(one));
  if (conflicts.length === 0) return null;
  return (
    <section class="group questions" aria-labelledby="questions-title">
      <h3 id="questions-title" tabIndex={-1}>
        Questions
      </h3>
      <ul class="plain-list">
        {conflicts.map((one) => (
          <Asked key={one.question + one.evidence.join()} isReadAloud={nameOf(one) === readAloud.value}>
            <Question of={one} />
          </Asked>
        ))}
      </ul>
    </section>
  );
}

interface AskedProps {
  readonly isReadAloud: boolean;
  readonly children: ComponentChildren;
}

/** The one that was read aloud last is marked: a word answers it and no other. */
function Asked({ isReadAloud, children }: AskedProps) {
  return (
    <li
      class={`question block ${isReadAloud ? 'read-aloud' : ''}`}
      {...(isReadAloud ? { id: 'question-read-aloud', tabIndex: -1 } : {})}
    >
      {isReadAloud && <p class="small-print">Read aloud: a word answers this one.</p>}
      {children}
    </li>
  );
}

function Question({ of }: { readonly of: Conflict }) {
  const { derived, settled } = useTools();
  const meant = new Set(of.evidence);
  const entries = derived.entries.value.filter(({ id }) => meant.has(id));
  const words = entries.length > 1 ? 'All of it holds' : 'It holds';
  return (
    <>
      <p>
        <span class="question-mark" aria-hidden="true">
          ?
        </span>{' '}
        {of.question}
      </p>
      {/* Numbered for "the second was misheard". */}
      <ol class={`plain-list question-entries ${entries.length > 1 ? 'numbered' : ''}`}>
        {entries.map((entry) => (
          <li key={entry.id}>
            <AtOdds entry={entry} />
          </li>
        ))}
      </ol>
      <button
        type="button"
        class="button wide"
        data-press={`keep ${of.evidence.join(' ')}`}
        aria-label={`${words}: ${entries.map(sentenceText).join('; ')}`}
        // It settles the question and confirms nothing: sides, negatives and numbers are confirmed one by one.
        onClick={() => settled.settle(of)}
      >
        {words}
      </button>
    </>
  );
}

/** One of the entries at odds: it can be looked at, or taken out at a press. */
function AtOdds({ entry }: { readonly entry: Entry }) {
  const { desk, derived, changing } = useTools();
  const text = sentenceText(entry);
  return (
    <div class="question-entry">
      <button
        type="button"
        class="entry-way"
        data-press={`open ${entry.id}`}
        onClick={() => {
          changing.value = entry.id;
        }}
      >
        <span class="only-heard">Change or strike: </span>
        <EntryLine entry={entry} />{' '}
        <span class="when">{clock(entry.at, dayOf(derived.startedAt.value))}</span>
      </button>
      <button
        type="button"
        class="button"
        data-press={`strike ${entry.id}`}
        aria-label={`Misheard, strike: ${text}`}
        onClick={() => strike(desk, [entry.id])}
      >
        Misheard
      </button>
    </div>
  );
}
