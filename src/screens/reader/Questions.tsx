// What the other end asks is kept at once and may be answered later; both go into the log with their times.

import { useState } from 'preact/hooks';
import type { KeptStep } from '../../record/index.ts';
import { clock, dayOf } from '../../timeline/index.ts';
import { passOn } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';

const answersTo = (steps: readonly KeptStep[], id: string): readonly (KeptStep & { step: 'answer' })[] =>
  steps.flatMap((one) => (one.step === 'answer' && one.question === id ? [one] : []));

export function Questions({ leave }: { readonly leave: () => void }) {
  const { desk, derived } = useTools();
  const [asked, setAsked] = useState('');
  const steps = desk.record.value?.exam.state.handover ?? [];
  const day = dayOf(derived.startedAt.value);
  const questions = steps.flatMap((one) => (one.step === 'question' ? [one] : []));
  const keep = () => {
    passOn(desk, { step: 'question', text: asked.trim() });
    setAsked('');
  };
  return (
    <section class="their-questions" aria-label="Their questions">
      <label class="field-name" for="asked-words">
        They asked
      </label>
      <input
        id="asked-words"
        value={asked}
        autocomplete="off"
        onInput={(event) => setAsked(event.currentTarget.value)}
      />
      <button type="button" class="button primary wide" disabled={asked.trim() === ''} onClick={keep}>
        Keep the question
      </button>
      {questions.length === 0 && <p class="empty">No question was kept.</p>}
      <ul class="plain-list spaced">
        {questions.map((question) => (
          <li key={question.id} class="asked">
            <p>
              <span class="when">{clock(question.at, day)}</span> <b>“{question.text}”</b>
            </p>
            {answersTo(steps, question.id).map(({ id, at, text }) => (
              <p key={id}>
                <span class="when">{clock(at, day)}</span> answered: “{text}”
              </p>
            ))}
            {answersTo(steps, question.id).length === 0 && (
              <Answer question={question.id} asked={question.text} />
            )}
          </li>
        ))}
      </ul>
      <button type="button" class="button big wide" onClick={leave}>
        Back
      </button>
    </section>
  );
}

function Answer({ question, asked }: { readonly question: string; readonly asked: string }) {
  const { desk } = useTools();
  const [text, setText] = useState('');
  return (
    <div class="choices">
      <input
        aria-label={`Answer to “${asked}”`}
        value={text}
        autocomplete="off"
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <button
        type="button"
        class="button"
        disabled={text.trim() === ''}
        onClick={() => passOn(desk, { step: 'answer', question, text: text.trim() })}
      >
        Answered
      </button>
    </div>
  );
}
