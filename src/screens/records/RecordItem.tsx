// One kept record in the list: who it is of, and what can be done with it.

import { useTools } from '../frame/tools.ts';
import type { Shown } from './summary.ts';
import { newRecord } from './switch.ts';
import { TypedConfirm } from './TypedConfirm.tsx';
import { idOf, OPEN_NOW } from './use-wanted.ts';
import { shapeOf, whoIs } from './who.ts';

const KIND = { live: '', invented: 'Invented.', opened: 'From a file.' } as const;

interface Props {
  readonly shown: Shown;
  /** its place in the list, for "open record two" */
  readonly number: number;
  /** what a word asked of it, or null */
  readonly told: string | null;
  readonly leave: (go: () => void) => void;
  readonly changed: () => void;
}

export function RecordItem({ shown: { facts, summary }, number, told, leave, changed }: Props) {
  const { desk, player, playback, heardSounds } = useTools();
  const here = desk.record.value?.facts.id === facts.id;
  const open = () =>
    leave(() => {
      desk.turning.value = { record: facts.id };
    });
  const wipe = async () => {
    if (here) {
      player.stop();
      playback.stop();
      newRecord(desk);
    }
    await heardSounds.drop(facts.id);
    await desk.keeper.remove(facts.id);
    changed();
  };
  return (
    <li class="record" id={here ? OPEN_NOW : idOf(facts.id)} tabIndex={-1}>
      {told !== null && (
        <p class="notice" role="status">
          {told}
        </p>
      )}
      <p>
        <span class="record-number">{number}.</span>{' '}
        <span aria-hidden="true">{shapeOf(summary.patient)}</span> <b>{whoIs(summary)}</b>{' '}
        <span class="when">{facts.startedAt.slice(11, 16)}</span> {KIND[facts.kind]} {facts.title}{' '}
        <span class="small-print unbroken">
          {summary.entries} {summary.entries === 1 ? 'entry' : 'entries'}
        </span>
        {here && <span class="mark">open now</span>} {summary.closed && <span class="mark">closed</span>}
      </p>
      <div class="choices">
        {!here && (
          <button type="button" class="button" onClick={open}>
            {summary.closed ? 'Reopen' : 'Open'}
          </button>
        )}
        <TypedConfirm
          title="Wipe"
          word="wipe"
          what="This record is removed from this device for good."
          act={wipe}
        />
      </div>
    </li>
  );
}
