// The foot of the page: the buttons that choose a panel, and the caution in one line; the whole of it is a press away.

import { EarSign, hearingNow } from '../listen/EarSign.tsx';
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
            {/* Only a phone has a button for the exam: there it is the one sign of hearing on the other panels. */}
            {one === 'talk' && <HearingSign />}
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

const HEARING_WORDS = { hearing: 'listening', off: 'not listening', deaf: 'NOT HEARING' } as const;

function HearingSign() {
  const { sign } = hearingNow(useTools());
  return (
    <>
      <EarSign sign={sign} />
      <span class="only-heard">{HEARING_WORDS[sign]}, </span>
    </>
  );
}
