// Choosing how the page looks.

import { LOOK_NAMES, LOOKS } from './look.ts';
import { Sheet } from './Sheet.tsx';
import { useTools } from './tools.ts';

export function LookSheet({ close }: { readonly close: () => void }) {
  const { look } = useTools();
  return (
    <Sheet title="How the page looks" close={close}>
      <div class="choices">
        {LOOKS.map((one) => (
          <button
            key={one}
            type="button"
            class="button"
            aria-pressed={look.value === one}
            onClick={() => {
              look.value = one;
            }}
          >
            {LOOK_NAMES[one]}
          </button>
        ))}
      </div>
    </Sheet>
  );
}
