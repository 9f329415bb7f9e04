// A written handover as its lines, which can be copied as plain text.

import { type HandoffText, textOf } from '../../handoff/index.ts';
import { done, trouble } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { Told } from './Told.tsx';

export function Written({ name, text }: { readonly name: string; readonly text: HandoffText }) {
  const { desk } = useTools();
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(textOf(text));
      desk.notice.value = done(
        `${name} was copied. It holds a patient’s words: paste it only where they may go.`,
      );
    } catch {
      desk.notice.value = trouble('The browser did not allow copying; mark the text and copy it by hand.');
    }
  };
  return (
    <section class="written" aria-label={name}>
      {text.lines.map((line, index) => {
        const key = `${index}-${line.role}`;
        return line.role === 'heading' ? <h3 key={key}>{line.text}</h3> : <Told key={key} line={line} />;
      })}
      <button type="button" class="button wide" onClick={() => void copy()}>
        Copy as text
      </button>
    </section>
  );
}
