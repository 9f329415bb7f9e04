// Saying by touch what is at one place: each press is said to the reader in words, and makes an entry that waits to be confirmed.

import type { CoverageRow } from '../../clinical/index.ts';
import type { Entry } from '../../record/index.ts';
import { findingName } from '../../timeline/index.ts';
import { say } from '../desk/index.ts';
import { EntryLine } from '../entries/EntryLine.tsx';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { rowName } from './left.ts';
import { absentWords, COMMON, presentWords, touchedWords } from './touch-words.ts';

interface Props {
  readonly place: CoverageRow;
  readonly entries: readonly Entry[];
  readonly close: () => void;
}

export function SaySheet({ place, entries, close }: Props) {
  const { desk, changing } = useTools();
  const tell = (words: string) => say(desk, [words], { engine: 'touched' });
  return (
    <Sheet title={rowName(place)} close={close} closeWords="Back" closeFirst>
      <ul class="plain-list spaced">
        {entries.map((entry) => (
          <li key={entry.id}>
            <button
              type="button"
              class="button wide said-of"
              onClick={() => {
                changing.value = entry.id;
              }}
            >
              <EntryLine entry={entry} />
              <span class={`mark state-${entry.state}`}>
                {entry.state === 'heard' ? 'to check' : 'confirmed'}
              </span>
            </button>
          </li>
        ))}
      </ul>
      <button type="button" class="button wide" onClick={() => tell(touchedWords(place))}>
        Looked at: put it in mind
      </button>
      <table class="touch-table">
        <caption class="only-heard">Findings, yes or no</caption>
        <tbody>
          {COMMON.map((finding) => (
            <tr key={finding}>
              <th scope="row">{findingName(finding)}</th>
              <td>
                <button
                  type="button"
                  class="button big"
                  aria-label={`${findingName(finding)}: YES`}
                  onClick={() => tell(presentWords(place, finding))}
                >
                  YES
                </button>
              </td>
              <td>
                <button
                  type="button"
                  class="button big"
                  aria-label={`${findingName(finding)}: NO`}
                  onClick={() => tell(absentWords(place, finding))}
                >
                  NO
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Sheet>
  );
}
