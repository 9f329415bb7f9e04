// What cannot be taken back is done only after a word is typed.

import { useId, useState } from 'preact/hooks';
import { whyNot } from './words.ts';

interface Props {
  readonly title: string;
  /** the word to type */
  readonly word: string;
  /** one sentence on what will happen */
  readonly what: string;
  readonly act: () => Promise<void>;
}

export function TypedConfirm({ title, word, what, act }: Props) {
  const id = useId();
  const [asked, setAsked] = useState(false);
  const [typed, setTyped] = useState('');
  const [failed, setFailed] = useState('');
  if (!asked)
    return (
      <button type="button" class="button" onClick={() => setAsked(true)}>
        {title} …
      </button>
    );
  const close = () => {
    setAsked(false);
    setTyped('');
  };
  return (
    <form
      class="stacked"
      onSubmit={(event) => {
        event.preventDefault();
        if (typed.trim().toLowerCase() !== word) return;
        act().then(close, (error) => setFailed(`Not done: ${whyNot(error)}`));
      }}
    >
      <div class="field">
        <label for={id}>
          {what} Type “{word}” to do it.
        </label>
        <input
          id={id}
          type="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          value={typed}
          data-focus-first
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
      </div>
      <div class="choices">
        <button type="submit" class="button danger" disabled={typed.trim().toLowerCase() !== word}>
          {title} for good
        </button>
        <button type="button" class="button" onClick={close}>
          Keep
        </button>
      </div>
      {failed !== '' && <p role="alert">{failed}</p>}
    </form>
  );
}
