// Entries that are at odds with each other, each as the question that settles it, with the entries a press away.

import { useTools, useWorked } from '../frame/tools.ts';
import { EntryLine } from './EntryLine.tsx';

export function Questions() {
  const { derived, changing } = useTools();
  const { reckoning } = useWorked();
  const { conflicts } = reckoning.value;
  if (conflicts.length === 0) return null;
  const entries = derived.entries.value;
  return (
    <section class="group" aria-label="Questions">
      <h3>Questions</h3>
      <ul class="plain-list">
        {conflicts.map(({ question, evidence }) => (
          <li key={question + evidence.join()} class="question block">
            <p>
              <span class="question-mark" aria-hidden="true">
                ?
              </span>{' '}
              {question}
            </p>
            <div class="question-entries">
              {entries
                .filter(({ id }) => evidence.includes(id))
                .map((entry) => (
                  <button
                    key={entry.id}
                    type="button"
                    class="button"
                    onClick={() => {
                      changing.value = entry.id;
                    }}
                  >
                    <span class="only-heard">Change or strike: </span>
                    <EntryLine entry={entry} />
                  </button>
                ))}
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
