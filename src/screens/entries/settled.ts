// Which questions between entries a person has settled by saying that all of it holds, and which one was read aloud last; a
// page opened anew asks again.

import { type Signal, signal } from '@preact/signals';
import type { Conflict } from '../../clinical/index.ts';

type Asked = Pick<Conflict, 'conflict' | 'evidence'>;

export interface Settled {
  readonly isSettled: (asked: Asked) => boolean;
  readonly settle: (asked: Asked) => void;
  /** asks once more what was settled last; false where nothing was */
  readonly askAgain: () => boolean;
  /** by its name, the question that was read aloud last; null once anything else has come into the record */
  readonly readAloud: Signal<string | null>;
}

/** One more entry among those at odds makes it another question. */
export const nameOf = ({ conflict, evidence }: Asked): string => `${conflict} ${evidence.join(' ')}`;

/** Nothing is settled yet. */
export function createSettled(): Settled {
  const names: Signal<readonly string[]> = signal([]);
  const readAloud = signal<string | null>(null);
  return {
    readAloud,
    isSettled: (asked) => names.value.includes(nameOf(asked)),
    settle: (asked) => {
      names.value = [...names.value, nameOf(asked)];
      readAloud.value = null;
    },
    askAgain: () => {
      const last = names.value.at(-1) ?? null;
      names.value = names.value.slice(0, -1);
      readAloud.value = null;
      return last !== null;
    },
  };
}
