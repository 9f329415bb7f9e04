// The sentence of an entry with side and answer set apart, so that both are seen at a glance.

import type { Statement } from '../../terms/index.ts';
import { sentenceOf } from './sentence.ts';

export function EntryLine({ entry }: { readonly entry: Statement }) {
  const { side, place, what, answer } = sentenceOf(entry);
  const denied = answer === 'NO' || answer === 'NOT INTACT';
  return (
    <span class="entry-line">
      {side !== null && (
        <b class={`side side-${side === 'SIDE NOT SAID' ? 'open' : side.toLowerCase()}`}>{side}</b>
      )}
      {side !== null && ' '}
      {place !== null && <span class="place">{place}: </span>}
      <span class="what">{what}</span>
      {answer !== null && ': '}
      {answer !== null && <b class={denied ? 'answer denied' : 'answer'}>{answer}</b>}
    </span>
  );
}
