// Turns the frames of one utterance into happenings, one frame at a time, since a correction may mean the frame before.

import type { CorrectionFrame, Frame } from '../parse/frame.ts';
import { isPlainConfirm, nextToConfirm } from './confirming.ts';
import { correct } from './correction.ts';
import { eachSide } from './each-side.ts';
import type { Effect, Said } from './effect.ts';
import type { Happening } from './event.ts';
import { problemsChanging } from './problems.ts';
import { type EntryDraft, stamp } from './stamp.ts';
import type { RecordState } from './state.ts';

/** Makes a happening once the identifier of its event is known: entries take theirs from it. */
export type Planned = (event: string) => Happening;

/** Where a frame was heard. */
export interface Place {
  readonly utterance: string;
  /** its words */
  readonly text: string;
  /** the frame's place in the utterance */
  readonly index: number;
  /** ISO 8601 with offset */
  readonly heardAt: string;
  /** an instant in milliseconds since the epoch, as ISO 8601 in the utterance's zone */
  readonly iso: (epochMs: number) => string;
}

/** What one frame makes happen to the record as it stands. */
export function interpret(state: RecordState, frame: Frame, place: Place): readonly Planned[] {
  const { utterance, heardAt } = place;
  switch (frame.frame) {
    case 'statement': {
      const { statement, heard, known, doubt } = frame;
      const at = frame.at === undefined ? heardAt : place.iso(frame.at);
      const group = `${utterance}.${frame.group}`;
      const draft = { statement, at, heardAt, heard, known, doubt, utterance, group };
      return eachSide<EntryDraft>(draft).map(entering);
    }
    case 'correction': {
      const said: Said = {
        utterance,
        group: `${utterance}.c${place.index}`,
        heardAt,
        ...(frame.at === undefined ? {} : { at: place.iso(frame.at) }),
      };
      return correct(state, frame, said).flatMap((effect) => planned(effect, frame, said, utterance));
    }
    case 'problem':
      return [problemsChanging(frame.change, { heard: frame.heard, heardAt, utterance })];
    case 'command': {
      const { frame: _, span: _span, ...asks } = frame;
      const { command, heard } = frame;
      const asked: Planned = () => ({ kind: 'command', payload: { ...asks, utterance } });
      if (command === 'restore') {
        const entries = state.lastStruck;
        const restored: Planned = () => ({ kind: 'restored', payload: { entries, by: heard } });
        return entries.length === 0 ? [asked] : [asked, restored];
      }
      if (command !== 'confirm' || !isPlainConfirm(place.text, frame.span)) return [asked];
      const entries = nextToConfirm(state).map(({ id }) => id);
      if (entries.length === 0) return [asked];
      return [asked, () => ({ kind: 'confirmed', payload: { entries, by: heard } })];
    }
  }
}

const entering =
  (draft: EntryDraft): Planned =>
  (event) => ({ kind: 'entered', payload: { id: event, ...draft } });

function planned(effect: Effect, frame: CorrectionFrame, said: Said, utterance: string): readonly Planned[] {
  const { heard, target, change, known } = frame;
  switch (effect.effect) {
    case 'strike':
      return [() => ({ kind: 'struck', payload: { entries: effect.targets, by: heard } })];
    case 'replace':
      return [
        (event) => ({
          kind: 'corrected',
          payload: {
            targets: effect.targets,
            replacements: stamp(effect.replacements.flatMap(eachSide), event),
          },
        }),
      ];
    case 'enter':
      return eachSide(effect.draft).map(entering);
    case 'keep': {
      const { why } = effect;
      const doubt = [...frame.doubt, why];
      const { heardAt, at = heardAt, group } = said;
      return [
        () => ({ kind: 'unmatched-correction', payload: { heard, utterance, target, change, why } }),
        entering({
          statement: { kind: 'note', text: heard },
          at,
          heardAt,
          heard,
          known,
          doubt,
          utterance,
          group,
        }),
      ];
    }
  }
}
