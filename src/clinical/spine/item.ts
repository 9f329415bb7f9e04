// One item of a spine rule: present, absent or unknown, for others to decide on; nothing here rules an injury out.

import type { Answer, Truth } from '../answer.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import type { Source } from '../source.ts';

export type ItemState = 'present' | 'absent' | 'unknown';

export interface SpineItem extends Reckoned {
  readonly set: 'nexus' | 'canadian';
  readonly item: string;
  /** what the item is to the rule: a low-risk criterion, a high-risk factor, a low-risk factor, or movement */
  readonly step: string;
  readonly state: ItemState;
  readonly text: string;
}

const STATE: Readonly<Record<Truth, ItemState>> = { yes: 'present', no: 'absent', unknown: 'unknown' };

export function spineItem(
  set: SpineItem['set'],
  step: string,
  item: string,
  answer: Answer,
  source: Source,
): SpineItem {
  const base = reckoned(answer.evidence, source, answer.missing);
  const state = STATE[answer.truth];
  const because = answer.because.length === 0 ? '' : ` (${[...new Set(answer.because)].join('; ')})`;
  return {
    set,
    step,
    item,
    state,
    ...base,
    missing: state === 'unknown' ? base.missing : [],
    text: `${item}: ${state}${because}`,
  };
}
