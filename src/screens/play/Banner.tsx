// Says over every panel that a record is invented, and holds the controls of the play.

import { useTools } from '../frame/tools.ts';
import { newRecord } from '../records/switch.ts';
import { clockOf, PACE_NAMES, PACES } from './pace.ts';
import type { Playing } from './player.ts';

export function Banner() {
  const { desk, player } = useTools();
  const record = desk.record.value;
  if (record === null || record.facts.kind === 'live') return null;
  const playing = player.playing.value;
  const active = playing !== null && playing.state !== 'ended';
  const invented = record.facts.kind === 'invented';
  return (
    <aside class={`banner ${active ? 'played' : ''}`} aria-label="What this record is">
      <p>
        <b>{invented ? 'INVENTED EXAM' : 'READ FROM A FILE'}</b> {record.facts.title}.{' '}
        {invented && 'No such patient.'}
      </p>
      {active ? (
        <Controls playing={playing} />
      ) : (
        <button
          type="button"
          class="button"
          onClick={() => {
            const before = playing?.before ?? null;
            player.stop();
            newRecord(desk, before);
          }}
        >
          {playing?.before == null ? 'Leave it' : 'Back to the record before'}
        </button>
      )}
    </aside>
  );
}

function Controls({ playing }: { readonly playing: Playing }) {
  const { player } = useTools();
  return (
    <div class="play-controls">
      <span class="play-clock">
        {clockOf(playing.position)} / {clockOf(playing.length)}
      </span>
      {playing.state === 'playing' ? (
        <button type="button" class="button small" onClick={player.pause}>
          Pause
        </button>
      ) : (
        <button type="button" class="button small" onClick={player.resume}>
          Go on
        </button>
      )}
      <button type="button" class="button small" onClick={player.stop}>
        Stop
      </button>
      <select
        aria-label="How fast it is played"
        value={String(playing.pace)}
        onChange={(event) => {
          const pace = PACES.find((one) => String(one) === event.currentTarget.value);
          if (pace !== undefined) player.setPace(pace);
        }}
      >
        {PACES.map((pace) => (
          <option key={pace} value={String(pace)}>
            {PACE_NAMES[pace]}
          </option>
        ))}
      </select>
    </div>
  );
}
