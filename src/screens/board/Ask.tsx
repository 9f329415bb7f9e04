// A question to the responder who writes the record: the one thing that a board can send.

import { useSignal } from '@preact/signals';
import type { BoardRow } from '../../link/index.ts';
import { post } from './feed.ts';
import type { BoardModel } from './model.ts';

interface Props {
  readonly row: BoardRow | undefined;
  readonly record: string;
  readonly model: BoardModel;
}

export function Ask({ row, record, model }: Props) {
  const text = useSignal('');
  const why = useSignal<string | null>(null);
  const ask = async () => {
    const asked = await post('board/question', model.token, { record, text: text.value });
    why.value = asked.kind === 'failed' ? asked.why : null;
    if (asked.kind === 'done') text.value = '';
  };
  return (
    <div class="board-ask">
      <label for="ask">Ask {row?.writer ?? 'the responder'}</label>
      <input
        id="ask"
        value={text.value}
        maxLength={500}
        autocomplete="off"
        onInput={(event) => {
          text.value = event.currentTarget.value;
        }}
      />
      <button type="button" class="button" disabled={text.value.trim() === ''} onClick={() => void ask()}>
        Ask
      </button>
      {why.value !== null && (
        <p class="board-fault" role="alert">
          Not asked: {why.value}
        </p>
      )}
      <ul class="plain-list" aria-label="Asked so far">
        {(row?.questions ?? []).map(({ id, text: asked, there, answer }) => (
          <li key={id}>
            “{asked}”{' '}
            {answer === null
              ? there
                ? '(in the record; no answer yet)'
                : '(not with the responder yet)'
              : ''}
            {answer !== null && <b> Answered: “{answer}”</b>}
          </li>
        ))}
      </ul>
    </div>
  );
}
