// Whether a drug is one that the patient takes at home: "one gram four times a day", "takes two puffs in the morning".

import type { Span } from '../../span.ts';
import type { Token } from '../../token.ts';

const OFTEN =
  /^((a|one|two|three|four|once|twice) )?((times? )?(a|per|every|each) (day|night|week|morning|evening|other day)|times daily|daily|nightly|at night|at bedtime|every (morning|night|evening|day|week|few days|other day)|regularly|normally|usually|as needed|when (he|she|i) (needs?|need)|when needed)\b/;

const GIVEN =
  /^(gave|given|giving|administered|administering|pushed|pushing|got|just|hung|repeated|repeat|another)$/;

/** True where the words say how often it is taken, or that somebody takes it, and none that it was given. */
export function isUsual(tokens: readonly Token[], { from, to }: Span): boolean {
  if (tokens.slice(Math.max(0, from - 2), to).some(({ word }) => GIVEN.test(word))) return false;
  const before = breathBefore(tokens, from).join(' ');
  return OFTEN.test(breathAfter(tokens, to).join(' ')) || (TAKES.test(before) && !STARTED.test(before));
}

const TAKES =
  /(^| )(takes|taking|uses|prescribed|on|(he|she|i|they) (take|use))( (his|her|my|the|a|regular|daily|usual|about))?$/;

// "Started him on morphine": it was given here.
const STARTED = /\b(put|popped|started|starting|whacked|keep|kept)\b/;

// A comma parts nothing here: "one gram, four times a day".
function breathAfter(tokens: readonly Token[], to: number): readonly string[] {
  return tokens.slice(to, to + 5).map(({ word }) => word);
}

function breathBefore(tokens: readonly Token[], from: number): readonly string[] {
  let at = from;
  while (at > 0 && from - at < 4 && tokens[at - 1]?.pause === '') at--;
  return tokens.slice(at, from).map(({ word }) => word);
}
