// The cautions: shown at the first start until they are read, and always a press away.

import { CAUTIONS } from './caution-words.ts';
import { Sheet } from './Sheet.tsx';

export function Cautions({ close }: { readonly close: () => void }) {
  return (
    <Sheet title="Before you rely on this" close={close} closeWords="I have read this">
      <ul class="plain-list spaced">
        {CAUTIONS.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </Sheet>
  );
}
