// A way of handing over, fetched when it is first asked for; while it comes, and if it cannot, the page says so.

import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { WAYS, type WayName } from './ways.ts';

type View = FunctionComponent<{ readonly close: () => void }>;

/** The sheet of the way that is open. */
export function OpenWay({ name }: { readonly name: WayName }) {
  const { way, desk } = useTools();
  const { name: title, load, needsRecord } = WAYS[name];
  const isPointless = needsRecord && desk.record.value === null;
  const close = () => {
    way.value = null;
  };
  const [view, setView] = useState<{ readonly View: View } | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    load()
      .then((View) => setView({ View }))
      .catch(() => setFailed(true));
  }, [load]);
  useEffect(() => {
    if (isPointless) way.value = null;
  }, [isPointless, way]);
  if (isPointless) return null;
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
