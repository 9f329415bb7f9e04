// The strip that says in one glance whether anything is being heard: a plain sign, one line of words, and one button.

import type { ComponentChildren } from 'preact';

interface Props {
  /** the sign: hearing, not hearing because it is off, or not hearing though it is wanted */
  readonly sign: 'hearing' | 'off' | 'deaf';
  /** in one or two words */
  readonly state: string;
  /** where what stands here must be told at once and not only when somebody looks */
  readonly urgent?: boolean;
  readonly words: ComponentChildren;
  readonly button?: ComponentChildren;
  /** below the words: loudness, words that are coming, progress */
  readonly more?: ComponentChildren;
}

export function EarStrip({ sign, state, urgent = false, words, button, more }: Props) {
  return (
    <div class={`ear ear-${sign}`}>
      <div class="ear-text">
        <p role={urgent ? 'alert' : 'status'}>
          <span class="ear-sign" aria-hidden="true" /> <b>{state}</b> {words}
        </p>
        {more}
      </div>
      {button}
    </div>
  );
}
