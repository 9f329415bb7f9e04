// How talk is said so that it is understood, in a few examples.

import { Sheet } from './Sheet.tsx';

const EXAMPLES: readonly (readonly [said: string, becomes: string])[] = [
  ['left forearm, deformity and swelling', 'two entries for the LEFT forearm'],
  ['no tenderness of the pelvis', 'pelvis, tenderness: NO'],
  ['pulse ninety two, strong and regular', 'a pulse of 92 with its qualities'],
  ['is your neck sore? no', 'neck, pain: NO'],
  ['make that the right', 'the last side is changed'],
  ['strike that', 'the last thing said is taken back'],
  ['confirmed', 'the last thing said is confirmed'],
  ['mark that', 'the moment is kept with its time'],
  ['what’s left', 'the places not examined yet'],
];

export function Help({ close }: { readonly close: () => void }) {
  return (
    <Sheet title="How to say it" close={close}>
      <p>
        Talk as you examine, head to toe. Say the side with the place. What is not understood is kept as said.
      </p>
      <dl class="examples">
        {EXAMPLES.map(([said, becomes]) => (
          <div key={said}>
            <dt>“{said}”</dt>
            <dd>{becomes}</dd>
          </div>
        ))}
      </dl>
    </Sheet>
  );
}
