// Saying one entry anew in words: free text is taken as it is, all else is read by the grammar as talk is.

import { useState } from 'preact/hooks';
import type { Entry } from '../../record/index.ts';
import { statementOf } from '../../record/index.ts';
import { type Changed, change, restate } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';

interface Props {
  readonly entry: Entry;
  readonly tell: (changed: Changed) => void;
}

const isFree = (entry: Entry): boolean =>
  entry.kind === 'note' ||
  entry.kind === 'mark' ||
  (entry.kind === 'history' && entry.years === undefined && entry.kg === undefined);

export function WordsChange({ entry, tell }: Props) {
  const { desk } = useTools();
  const free = isFree(entry);
  const [text, setText] = useState(free && 'text' in entry ? (entry.text ?? '') : '');
  const apply = () => {
    const words = text.trim();
    if (words === '') return tell({ kind: 'unchanged', why: 'no words are there' });
    const said = statementOf(entry);
    if (free && (said.kind === 'note' || said.kind === 'mark' || said.kind === 'history'))
      return tell(change(desk, entry.id, { change: 'statement', statement: { ...said, text: words } }));
    return tell(restate(desk, entry.id, entry.kind, words));
  };
  return (
    <fieldset>
      <legend>{free ? 'Words, by keyboard' : 'In words, by keyboard'}</legend>
      <form
        class="words"
        onSubmit={(event) => {
          event.preventDefault();
          apply();
        }}
      >
        <label>
          <span class="field-name">
            {free
              ? 'The words as they should stand'
              : 'In full, such as “left wrist swelling” or “BP 120 over 80”'}
          </span>
          <input
            type="text"
            autocomplete="off"
            spellcheck={false}
            value={text}
            onInput={(event) => setText(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="button big wide">
          Change the words
        </button>
      </form>
    </fieldset>
  );
}
