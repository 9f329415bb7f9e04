// The strip that says in one glance whether anything is being heard: a plain sign, one line of words, and one button.

import type { ComponentChildren } from 'preact';
import { EarSign, type Sign } from './EarSign.tsx';

interface Props {
  readonly sign: Sign;
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
          <EarSign sign={sign} /> <b>{state}</b> {words}
        </p>
        {more}
      </div>
      {button}
    </div>
  );
}
