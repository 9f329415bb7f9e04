// One number with a step down, a field and a step up, each large enough for a gloved finger.

interface Props {
  readonly label: string;
  readonly text: string;
  readonly type: (text: string) => void;
}

/** One step up or down; a number with a decimal moves by a tenth. */
function stepped(text: string, by: 1 | -1): string {
  const value = Number(text.replace(',', '.'));
  if (!Number.isFinite(value)) return text;
  return text.includes('.') ? (Math.round(value * 10 + by) / 10).toFixed(1) : String(value + by);
}

export function Digits({ label, text, type }: Props) {
  return (
    <div class="digits">
      <button
        type="button"
        class="button big"
        aria-label={`${label}: one less`}
        onClick={() => type(stepped(text, -1))}
      >
        −
      </button>
      <label>
        <span>{label}</span>
        <input
          inputMode="decimal"
          autocomplete="off"
          value={text}
          onInput={(event) => type(event.currentTarget.value)}
        />
      </label>
      <button
        type="button"
        class="button big"
        aria-label={`${label}: one more`}
        onClick={() => type(stepped(text, 1))}
      >
        +
      </button>
    </div>
  );
}
