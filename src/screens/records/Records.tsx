// The records on this device: fetched when they are asked for, so that the page itself starts lightly.

import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Sheet } from '../frame/Sheet.tsx';

interface Props {
  readonly close: () => void;
}

export function Records({ close }: Props) {
  const [loaded, setLoaded] = useState<{ readonly View: ComponentType<Props> } | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    import('./RecordsSheet.tsx').then(
      ({ RecordsSheet }) => setLoaded({ View: RecordsSheet }),
      () => setFailed(true),
    );
  }, []);
  if (loaded !== null) return <loaded.View close={close} />;
  return (
    <Sheet title="Records on this device" close={close}>
      <p class="empty">
        {failed ? 'This part of the page could not be loaded; close it and try again.' : 'Getting ready …'}
      </p>
    </Sheet>
  );
}
