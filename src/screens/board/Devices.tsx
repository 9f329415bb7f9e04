// The devices of the incident: who carries them, when they were last heard of, and what is not here yet.

import { ago, type BoardModel, postNow } from './model.ts';

export function Devices({ model }: { readonly model: BoardModel }) {
  const now = postNow(model);
  return (
    <section aria-label="Devices" class="board-part">
      <h2>Devices</h2>
      {model.devices.value.length === 0 && <p class="empty">No phone was let in yet.</p>}
      <ul class="plain-list">
        {model.devices.value.map(({ device, name, out, heardAt, here, made, troubles }) => (
          <li key={device} class="board-device">
            <b>{name}</b> <span class="small-print">{device}</span>
            {out ? ' PUT OUT' : `: heard ${ago(heardAt, now)}`}, {here}
            {made !== null && made > here ? ` of ${made}` : ''} here
            {troubles.map((trouble) => (
              <p key={trouble} class="board-fault">
                {trouble}
              </p>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}
