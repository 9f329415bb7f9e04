// How the page looks, and how talk is said so that it is understood.

import { LOOK_NAMES, LOOKS } from './look.ts';
import { Sheet } from './Sheet.tsx';
import { useTools } from './tools.ts';

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

export function More({ close }: { readonly close: () => void }) {
  const { look } = useTools();
  return (
    <Sheet title="Look and help" close={close}>
      <fieldset>
        <legend>How the page looks</legend>
        <div class="choices pairs">
          {LOOKS.map((one) => (
            <button
              key={one}
              type="button"
              class="button big"
              aria-pressed={look.value === one}
              onClick={() => {
                look.value = one;
              }}
            >
              {LOOK_NAMES[one]}
            </button>
          ))}
        </div>
      </fieldset>
      <h3>How to say it</h3>
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
