// The sign of whether anything is being heard: a filled disc hears, a ring does not, a cross is in trouble.

import type { Tools } from '../frame/tools.ts';

/** Hearing, not hearing because it is off, or not hearing though it is wanted. */
export type Sign = 'hearing' | 'off' | 'deaf';

export const EarSign = ({ sign }: { readonly sign: Sign }) => (
  <span class={`ear-sign sign-${sign}`} aria-hidden="true" />
);

/** How it stands with hearing, in a sign and a few words, for where the whole strip is not shown. */
export function hearingNow({ ear, dictation, speaker }: Pick<Tools, 'ear' | 'dictation' | 'speaker'>): {
  readonly sign: Sign;
  readonly words: string;
} {
  const all = [ear.now.value, dictation.now.value];
  const deaf = all.find((one) => one.state === 'deaf');
  if (deaf?.state === 'deaf') return { sign: 'deaf', words: `NOT HEARING: ${deaf.why}.` };
  if (all.some(({ state }) => state === 'hearing'))
    return speaker.speaking.value
      ? { sign: 'off', words: 'not listening while the page speaks' }
      : { sign: 'hearing', words: 'listening' };
  const stopped = all.find((one) => one.state === 'stopped');
  if (stopped?.state === 'stopped') return { sign: 'deaf', words: `Listening stopped. ${stopped.why}` };
  return { sign: 'off', words: 'not listening' };
}
