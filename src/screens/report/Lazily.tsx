// A part of the page that is fetched when it is first asked for; while it comes, and if it cannot, the page says so.

import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Sheet } from '../frame/Sheet.tsx';

type View = FunctionComponent<{ readonly close: () => void }>;

interface Props {
  readonly title: string;
  readonly load: () => Promise<View>;
  readonly close: () => void;
}

export function Lazily({ title, load, close }: Props) {
  const [view, setView] = useState<{ readonly View: View } | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    load()
      .then((View) => setView({ View }))
      .catch(() => setFailed(true));
  }, [load]);
  if (view !== null) return <view.View close={close} />;
  return (
    <Sheet title={title} close={close}>
      <p role={failed ? 'alert' : 'status'}>
        {failed
          ? 'This part of the page could not be loaded. Close this and try again; nothing was lost.'
          : 'Getting ready …'}
      </p>
    </Sheet>
  );
}
