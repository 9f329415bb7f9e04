// One thing that was worked out: its words, what it lacks, the entries it rests on, and its source.

import { EntryFold } from '../entries/EntryFold.tsx';
import { EntryWays } from '../entries/EntryWays.tsx';

interface Worked {
  readonly evidence: readonly string[];
  readonly unconfirmed: readonly string[];
  readonly missing: readonly string[];
  readonly source: string;
}

interface Props {
  readonly text: string;
  readonly of: Worked;
  /** one that is met stands out, with the entries it rests on in sight */
  readonly tone?: 'red' | 'yellow';
}

export function Reckoned({ text, of, tone }: Props) {
  const { evidence, unconfirmed, missing, source } = of;
  return (
    <div class={`reckoned ${tone ?? ''}`}>
      <p class="reckoned-text">
        {tone !== undefined && <b class={`level level-${tone}`}>{tone.toUpperCase()}</b>} {text}
        {unconfirmed.length > 0 && (
          <span class="mark state-heard">
            {unconfirmed.length} of {evidence.length} not confirmed
          </span>
        )}
      </p>
      {missing.length > 0 && <p class="lacks">Lacks: {missing.join('; ')}</p>}
      {tone !== undefined && <EntryWays ids={evidence} />}
      <EntryFold
        of="worked-from"
        text={tone === undefined && evidence.length > 0 ? 'Entries and source' : 'Source'}
        ids={tone === undefined ? evidence : []}
      >
        <p class="small-print">{source}</p>
      </EntryFold>
    </div>
  );
}
