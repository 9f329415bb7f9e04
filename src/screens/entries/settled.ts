// Which questions between entries a person has settled by saying that all of it holds; a page opened anew asks again.

import { type Signal, signal } from '@preact/signals';
import type { Conflict } from '../../clinical/index.ts';

type Asked = Pick<Conflict, 'conflict' | 'evidence'>;

export interface Settled {
  readonly isSettled: (asked: Asked) => boolean;
  readonly settle: (asked: Asked) => void;
}

const nameOf = ({ conflict, evidence }: Asked): string => `${conflict} ${evidence.join(' ')}`;

/** Nothing is settled yet. One more entry among those at odds makes it another question. */
export function createSettled(): Settled {
  const names: Signal<ReadonlySet<string>> = signal(new Set());
  return {
    isSettled: (asked) => names.value.has(nameOf(asked)),
    settle: (asked) => {
      names.value = new Set([...names.value, nameOf(asked)]);
    },
  };
}
