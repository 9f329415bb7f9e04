// The foot of the page: the buttons that choose a panel, and the caution in one line; the whole of it is a press away.

import { CAUTION, CAUTION_SHORT } from './caution-words.ts';
import { choices, marked, PANEL_NAMES } from './panels.ts';
import { useTools } from './tools.ts';

export function Foot() {
  const { panel, columns, sheet } = useTools();
  const now = marked(panel.value, columns.value);
  return (
    <footer class="foot">
      <nav class="foot-ways" aria-label="Panels">
        {choices(columns.value).map((one) => (
          <button
            key={one}
            type="button"
            class="foot-way"
            aria-current={one === now ? 'true' : undefined}
            onClick={() => {
              panel.value = one;
            }}
          >
            {PANEL_NAMES[one]}
          </button>
        ))}
      </nav>
      {columns.value === 1 ? (
        <p class="caution-line">{CAUTION_SHORT}</p>
      ) : (
        <button
          type="button"
          class="caution-line"
          onClick={() => {
            sheet.value = 'cautions';
          }}
        >
          {CAUTION}
        </button>
      )}
    </footer>
  );
}
