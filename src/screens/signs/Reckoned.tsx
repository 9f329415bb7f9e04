// One thing that was worked out: its words, what it lacks, on how much unconfirmed it rests, and its source.

interface Worked {
  readonly evidence: readonly string[];
  readonly unconfirmed: readonly string[];
  readonly missing: readonly string[];
  readonly source: string;
}

interface Props {
  readonly text: string;
  readonly of: Worked;
  readonly tone?: 'red' | 'yellow';
}

export function Reckoned({ text, of, tone }: Props) {
  const { evidence, unconfirmed, missing, source } = of;
  return (
    <div class={`reckoned ${tone ?? ''}`}>
      <p class="reckoned-text">
        {text}
        {unconfirmed.length > 0 && (
          <span class="mark state-heard">
            {unconfirmed.length} of {evidence.length} not confirmed
          </span>
        )}
      </p>
      {missing.length > 0 && <p class="lacks">Lacks: {missing.join('; ')}</p>}
      <details>
        <summary>Source</summary>
        <p class="small-print">{source}</p>
      </details>
    </div>
  );
}
