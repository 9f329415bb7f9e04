// Handing the open record on, and taking over what another device offers; who writes next is said before and after.

import { type Mate, writesNext } from '../../../link/index.ts';
import { useTools } from '../../frame/tools.ts';
import type { Handing } from './handing.ts';

export function Offers({
  handing,
  nameOf,
}: {
  readonly handing: Handing;
  readonly nameOf: (device: string) => string;
}) {
  return (
    <>
      {handing.offers.value.map((offer) => (
        <div key={offer.id} class="notice">
          <p>
            <b>{nameOf(offer.from)}</b> offers you a record: <b>{offer.who}</b>, {offer.events.length} events.
            Taken over, it is yours to write.
          </p>
          <button
            type="button"
            class="button primary"
            onClick={() => void handing.accept(offer, nameOf(offer.from))}
          >
            Take it over
          </button>{' '}
          <button type="button" class="button" onClick={() => handing.decline(offer)}>
            Not now
          </button>
        </div>
      ))}
    </>
  );
}

export function HandOn({ handing, mates }: { readonly handing: Handing; readonly mates: readonly Mate[] }) {
  const { desk } = useTools();
  const record = desk.record.value;
  if (record === null || record.facts.kind !== 'live') return null;
  const writes = writesNext(record.exam.state.handover);
  if (writes.kind === 'elsewhere')
    return (
      <p>
        <b>{writes.name}</b> writes this record now. What is said here is kept, and the board tells it apart.
      </p>
    );
  const waits = handing.offeredTo.value;
  return (
    <section aria-label="Hand this record on" class="part">
      <h3>Hand this record on</h3>
      {waits !== null && (
        <p role="status">
          Offered to {waits}. It stays yours to write until {waits} takes it over.
        </p>
      )}
      {mates.length === 0 && <p class="small-print">Nobody else was heard of in the last minutes.</p>}
      <div class="choices">
        {mates.map(({ device, name }) => (
          <button key={device} type="button" class="button" onClick={() => void handing.offer(device, name)}>
            Hand it to {name}
          </button>
        ))}
      </div>
    </section>
  );
}
