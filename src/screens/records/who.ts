// How a patient is called on the screen and aloud: a shape and a number that need no colour, then label and name.

import type { Summary } from './summary.ts';

/** Told apart by outline alone. */
const SHAPES = ['●', '■', '▲', '◆', '★', '✚', '▼', '⬟', '◐', '✖'];

export const shapeOf = (patient: number): string => SHAPES[(patient - 1) % SHAPES.length] ?? '●';

type Who = Pick<Summary, 'patient' | 'label' | 'name' | 'tag'>;

/** A name that was said twice in one breath ("Ada. Ada Lark") is shown once, as it was said in full; the record keeps all. */
function onceNamed(name: string): string {
  const parts = name.split(/\s*[.,;]\s+|[.,;]$/).filter((part) => part !== '');
  const words = (part: string): string => ` ${part.toLowerCase()} `;
  const said = parts.filter(
    (part, at) =>
      !parts.some(
        (other, where) =>
          where !== at && words(other).includes(words(part)) && (words(other) !== words(part) || where < at),
      ),
  );
  return said.length === parts.length ? name.replace(/\.$/, '') : said.join(', ');
}

/** `Patient 2, Ada, by the stream`. */
export const whoIs = ({ patient, label, name, tag }: Who): string =>
  [`Patient ${patient}`, label, onceNamed(name), tag].filter((part) => part !== '').join(', ');
