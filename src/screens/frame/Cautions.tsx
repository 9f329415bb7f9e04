// What the page does in three sentences, and the cautions: shown at the first start until they are read, and always at hand.

import { CAUTIONS, EXPLAINED, MICROPHONE } from './caution-words.ts';
import { Sheet } from './Sheet.tsx';

export function Cautions({ close }: { readonly close: () => void }) {
  return (
    <Sheet title="Fieldsay: before you rely on it" close={close} closeWords="I have read this" closeFirst>
      <div class="explained">
        {EXPLAINED.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <h3>Cautions</h3>
      <ul class="cautions">
        {CAUTIONS.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <p class="small-print">{MICROPHONE}</p>
    </Sheet>
  );
}
