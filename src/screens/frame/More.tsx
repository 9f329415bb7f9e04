// How the page looks and is held, and how talk is said so that it is understood.

import { HAND_NAMES, HANDS } from './hand.ts';
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
  const { look, hand, sheet } = useTools();
  return (
    <Sheet title="More" close={close}>
      <button
        type="button"
        class="button wide"
        onClick={() => {
          sheet.value = 'cautions';
        }}
      >
        Cautions
      </button>
      <Choice legend="How the page looks" names={LOOK_NAMES} all={LOOKS} chosen={look} />
      <Choice legend="Held in the" names={HAND_NAMES} all={HANDS} chosen={hand} />
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

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly names: Readonly<Record<T, string>>;
  readonly all: readonly T[];
  readonly chosen: { value: T };
}

/** One of a few, each as a large button. */
export function Choice<T extends string>({ legend, names, all, chosen }: ChoiceProps<T>) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div class="choices even">
        {all.map((one) => (
          <button
            key={one}
            type="button"
            class="button"
            aria-pressed={chosen.value === one}
            onClick={() => {
              chosen.value = one;
            }}
          >
            {names[one]}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
