// "Pelvic binder on. Strike that, pelvis is stable": what is told behind the strike says what was meant by it.

import type { CorrectionFrame, Frame } from '../parse/frame.ts';
import type { Statement } from '../terms/index.ts';
import { type Entry, stands } from './entry.ts';
import type { RecordState } from './state.ts';
import { groupsThatFit } from './target.ts';

type Stated = Extract<Frame, { frame: 'statement' }>;

/**
 * The frames with each strike that names nothing and has something told behind it in the same words: where that contradicts what
 * was told earlier, and not what was said last, the earlier is meant; where it contradicts nothing, what is struck is asked about.
 */
export function withRetoldStrikes(frames: readonly Frame[], state: RecordState): readonly Frame[] {
  const [strike, told, ...others] = frames;
  if (!isBare(strike) || told?.frame !== 'statement') return frames;
  const [last] = groupsThatFit(state, {});
  if (last === undefined || last.entries.some((entry) => isOfSame(told.statement, entry))) return frames;
  const meant = state.entries.findLast((entry) => stands(entry) && contradicts(told.statement, entry));
  return meant === undefined
    ? [strike, asked(told, last.entries), ...others]
    : [{ ...strike, target: targetOf(meant) }, told, ...others];
}

const isBare = (frame: Frame | undefined): frame is CorrectionFrame =>
  frame?.frame === 'correction' && frame.change.change === 'strike' && Object.keys(frame.target).length === 0;

/** What is told anew in the place of the last thing: the same kind of thing there, whatever it says now. */
function isOfSame(now: Statement, entry: Entry): boolean {
  if (now.kind !== entry.kind) return false;
  if (now.kind === 'finding' && entry.kind === 'finding')
    return now.site === entry.site || now.finding === entry.finding;
  if (now.kind === 'vital' && entry.kind === 'vital') return now.vital === entry.vital;
  return true;
}

/** The same finding of the same place told otherwise. Of a sign another reading may be of now, and contradicts none. */
function contradicts(now: Statement, entry: Entry): boolean {
  if (now.kind !== 'finding' || entry.kind !== 'finding') return false;
  return (
    now.finding === entry.finding &&
    now.site === entry.site &&
    now.side === entry.side &&
    now.present !== entry.present
  );
}

function targetOf(entry: Entry): CorrectionFrame['target'] {
  if (entry.kind !== 'finding') return {};
  const { kind, finding, site, side } = entry;
  return { kind, finding, site, ...(side === null ? {} : { side }) };
}

const asked = (frame: Stated, struck: readonly Entry[]): Stated => ({
  ...frame,
  doubt: [
    ...frame.doubt,
    `${[...new Set(struck.map(({ heard }) => `“${heard}”`))].join(', ')} was struck: was that meant?`,
  ],
});
