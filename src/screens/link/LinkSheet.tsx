// The sheet of the link, fetched when it is asked for, so that a page that is alone carries nothing of it.

import { useEffect, useState } from 'preact/hooks';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';

export function LinkSheet({ close }: { readonly close: () => void }) {
  const tools = useTools();
  const [failed, setFailed] = useState(false);
  const joined = tools.link.joined.value;
  useEffect(() => {
    tools.link.fetch(tools).catch(() => setFailed(true));
  }, []);
  return (
    <Sheet title="The team link" close={close}>
      {joined === null ? (
        <p class="empty">
          {failed ? 'This part of the page could not be loaded; close it and try again.' : 'Getting ready …'}
        </p>
      ) : (
        <joined.View close={close} />
      )}
    </Sheet>
  );
}
