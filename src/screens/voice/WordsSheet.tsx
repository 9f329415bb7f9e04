// What can be said: how findings are said, and the words to the page, each with what it does.

import { Sheet } from '../frame/Sheet.tsx';
import { BY_HAND_ALONE, SAYINGS } from './words.ts';

const EXAMPLES: readonly (readonly [said: string, becomes: string])[] = [
  ['left forearm, deformity and swelling', 'two entries for the LEFT forearm'],
  ['no tenderness of the pelvis', 'pelvis, tenderness: NO'],
  ['pulse ninety two, strong and regular', 'a pulse of 92 with its qualities'],
  ['looking at the left wrist', 'LEFT wrist looked at; what comes next is said of it'],
  ['is your neck sore? no', 'neck, pain: NO'],
];

export function WordsSheet({ close }: { readonly close: () => void }) {
  return (
    <Sheet title="What can I say?" close={close}>
      <p>
        Talk as you examine, head to toe. Say the side with the place. What is not understood is kept as said.
      </p>
      <Sayings title="Findings and signs" rows={EXAMPLES} />
      {SAYINGS.map(({ title, sayings }) => (
        <Sayings key={title} title={title} rows={sayings.map(({ say, does }) => [say, does])} />
      ))}
      <p>{BY_HAND_ALONE}</p>
    </Sheet>
  );
}

interface Props {
  readonly title: string;
  readonly rows: readonly (readonly [said: string, does: string])[];
}

const Sayings = ({ title, rows }: Props) => (
  <section>
    <h3>{title}</h3>
    <dl class="examples">
      {rows.map(([said, does]) => (
        <div key={said}>
          <dt>“{said}”</dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  </section>
);
