// Saying one entry again: the next words are taken in its place; what does not fit goes into the record as talk does.

import { useEffect, useState } from 'preact/hooks';
import { restate } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { isListening } from '../listen/any-ear.ts';
import type { Part } from './part.ts';

export function SayAgain({ entry, tell }: Part) {
  const tools = useTools();
  const { desk, ear, dictation } = tools;
  // Looked at so that the words below follow the ears.
  void [ear.now.value, dictation.now.value];
  const [waiting, setWaiting] = useState(false);
  useEffect(() => {
    if (!waiting) return;
    const before = desk.aside.peek();
    desk.aside.value = ({ text }) => {
      const changed = restate(desk, entry.id, entry.kind, text);
      setWaiting(false);
      tell(
        changed.kind === 'changed'
          ? changed
          : { kind: 'unchanged', why: `${changed.why}; what was said is among the entries` },
      );
      return changed.kind === 'changed';
    };
    return () => {
      desk.aside.value = before;
    };
  }, [waiting, entry.id]);
  const begin = () => {
    setWaiting(true);
    if (!isListening(tools) && ear.model.peek().state === 'stored') void ear.start();
  };
  return (
    <fieldset>
      <legend>By voice</legend>
      {waiting ? (
        <>
          <p role="status">
            {isListening(tools)
              ? 'Say it now, in full, such as “left wrist swelling”.'
              : 'Nothing is listening: set hearing up first, or use the keyboard below.'}
          </p>
          <button type="button" class="button wide" onClick={() => setWaiting(false)}>
            Do not wait for it
          </button>
        </>
      ) : (
        <button type="button" class="button big wide" onClick={begin}>
          Say it again
        </button>
      )}
    </fieldset>
  );
}
