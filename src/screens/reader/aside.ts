// While the radio is in use the microphone hears the report itself and the other end: none of it becomes an entry.

import type { Command } from '../../parse/index.ts';
import { type Desk, passOn } from '../desk/index.ts';

/** What may be asked of the reader by voice; anything else that sounds like a command may have come over the radio. */
const OBEYED: readonly Command[] = [
  'next-piece',
  'last-piece',
  'say-again',
  'order-atmist',
  'order-imist-ambo',
  'order-sbar',
  'close-sheet',
];

/** Ways of saying something by hand: whoever types, pastes or touches means it. */
const BY_HAND: readonly string[] = ['typed', 'pasted', 'touched'];

function isForReader(desk: Desk, text: string): boolean {
  const reader = desk.reader.peek();
  if (reader === null) return false;
  const { frames } = reader.read({ text, heardAt: desk.clock(), zone: desk.zone }, reader.begin());
  const [only, ...others] = frames;
  return only?.frame === 'command' && others.length === 0 && OBEYED.includes(only.command);
}

/** Takes what is heard aside until the function given back is called; `heard` is told each of the words kept so. */
export function takeAside(desk: Desk, heard: (text: string) => void): () => void {
  desk.aside.value = ({ text, engine }) => {
    if (BY_HAND.includes(engine) || isForReader(desk, text)) return false;
    passOn(desk, { step: 'aside', text, engine });
    heard(text);
    return true;
  };
  return () => {
    desk.aside.value = null;
  };
}
