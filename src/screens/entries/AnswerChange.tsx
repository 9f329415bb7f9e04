// One of a few answers to an entry: its side, yes or no, or how the patient responds; each a large button.

import type { Entry } from '../../record/index.ts';
import { change } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { hasAnswer, sidesToChoose } from './changes.ts';
import type { Part } from './part.ts';

interface AnswersProps<T> {
  readonly legend: string;
  readonly answers: readonly (readonly [name: string, value: T])[];
  readonly now: T | null;
  readonly choose: (value: T) => void;
}

function Answers<T>({ legend, answers, now, choose }: AnswersProps<T>) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div class="choices even">
        {answers.map(([name, value]) => (
          <button
            key={name}
            type="button"
            class="button big"
            aria-pressed={now === value}
            onClick={() => choose(value)}
          >
            {name}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** The patient's side. */
export function SideChange({ entry, tell }: Part) {
  const { desk } = useTools();
  const sides = sidesToChoose(entry);
  if (sides.length === 0) return null;
  return (
    <Answers
      legend="Side (the patient’s)"
      answers={sides.map((side) => [side.toUpperCase(), side] as const)}
      now={'side' in entry ? (entry.side ?? null) : null}
      choose={(side) => tell(change(desk, entry.id, { change: 'side', side }))}
    />
  );
}

/** There or not, intact or not. */
export function AnswerChange({ entry, tell }: Part) {
  const { desk } = useTools();
  if (!hasAnswer(entry)) return null;
  const [yes, no] = entry.kind === 'csm' ? ['INTACT', 'NOT INTACT'] : ['YES', 'NO'];
  return (
    <Answers
      legend={entry.kind === 'csm' ? 'Intact or not' : 'Yes or no'}
      answers={[[yes ?? '', true] as const, [no ?? '', false] as const]}
      now={!('present' in entry) || entry.present !== false}
      choose={(present) => tell(change(desk, entry.id, { change: 'present', present }))}
    />
  );
}

/** The four steps of responsiveness (AVPU). */
const AVPU = [
  ['Alert', 'A'],
  ['Voice', 'V'],
  ['Pain', 'P'],
  ['None', 'U'],
] as const;

const isResponse = (entry: Entry): entry is Extract<Entry, { vital: 'responsiveness' }> =>
  entry.kind === 'vital' && entry.vital === 'responsiveness';

/** What the patient responds to. */
export function AvpuChange({ entry, tell }: Part) {
  const { desk } = useTools();
  if (!isResponse(entry)) return null;
  return (
    <Answers
      legend="Responds to"
      answers={AVPU}
      now={entry.value.avpu ?? null}
      choose={(avpu) => {
        // Who is not alert is not asked where he is: the orientation said before goes with it.
        const { orientation, ...rest } = entry.value;
        const value =
          avpu === 'A' && orientation !== undefined ? { ...rest, avpu, orientation } : { ...rest, avpu };
        tell(
          change(desk, entry.id, {
            change: 'statement',
            statement: { kind: 'vital', vital: 'responsiveness', value },
          }),
        );
      }}
    />
  );
}
