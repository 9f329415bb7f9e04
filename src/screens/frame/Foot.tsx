// The foot of the page: the buttons that choose a panel, and the caution in one line that leads to all of them.

import { CAUTION } from './caution-words.ts';
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
      <button
        type="button"
        class="caution-line"
        onClick={() => {
          sheet.value = 'cautions';
        }}
      >
        {CAUTION}
      </button>
    </footer>
  );
}
