// How a patient is called on the screen and aloud: a shape and a number that need no colour, then label and name.

import type { Summary } from './summary.ts';

/** Told apart by outline alone. */
const SHAPES = ['●', '■', '▲', '◆', '★', '✚', '▼', '⬟', '◐', '✖'];

export const shapeOf = (patient: number): string => SHAPES[(patient - 1) % SHAPES.length] ?? '●';

type Who = Pick<Summary, 'patient' | 'label' | 'name' | 'tag'>;

/** `Patient 2, Ada, by the stream`. */
export const whoIs = ({ patient, label, name, tag }: Who): string =>
  [`Patient ${patient}`, label, name, tag].filter((part) => part !== '').join(', ');
