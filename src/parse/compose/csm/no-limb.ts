// A pulse that is no limb's: that of a patient who does not answer or breathe, and that of the clip on a finger.

import type { Frame } from '../../frame.ts';
import type { Piece } from '../../pieces/piece.ts';
import { saidIn, type Token } from '../../token.ts';
import { bear, type Talk } from '../talk.ts';

const ARREST =
  /\b(unresponsive|unconscious|apnoeic|apneic|(not|isn't|is not|stopped|no) breathing|c p r|cpr|compressions|arrest|arrested|carotid|central)\b/;
const CLIP = /^(ox|oximeter|oximetry|oxymeter|reading|trace|signal)\b/;

/** "Unresponsive, no pulse, not breathing", "no pulse ox": said of no limb in mind. */
export const isPulseOfNoLimb = (tokens: readonly Token[], { from, to }: Piece): boolean =>
  /\bpulses?$/.test(saidIn(tokens, from, to)) &&
  (ARREST.test(saidIn(tokens, 0, tokens.length)) || CLIP.test(saidIn(tokens, to, to + 1)));

/** After one of the frames from `at` on tells that the patient does not answer or breathe, no limb is in mind any more. */
export function forgetLimb(talk: Talk, at: number): void {
  if (talk.frames.slice(at).some(isOfArrest)) bear(talk, { sites: [] });
}

function isOfArrest(frame: Frame): boolean {
  if (frame.frame !== 'statement') return false;
  const { statement } = frame;
  if (statement.kind === 'care') return statement.care === 'cpr';
  if (statement.kind !== 'vital') return false;
  if (statement.vital === 'responsiveness') return statement.value.avpu === 'U';
  return statement.vital === 'respirations' && statement.value.quality?.includes('apneic') === true;
}
