// "Sats ninety six." "Copy, sats ninety six." "Correction, eighty six.": what was wrong was said twice, and neither may stand.

import type { Effect } from './effect.ts';
import { type Entry, stands } from './entry.ts';
import type { RecordState } from './state.ts';
import { statementOf } from './statement-of.ts';
import { isSubstance } from './target.ts';

// A reading that is taken anew takes longer than one that is only read back: common practice, no source.
const SOON_MS = 30_000;

/** The effects, each also on what the utterances straight before its targets said in the very same words. */
export function withReadBacks(state: RecordState, effects: readonly Effect[]): readonly Effect[] {
  return effects.map((effect) => {
    if (effect.effect !== 'strike' && effect.effect !== 'replace') return effect;
    const also = effect.targets.flatMap((id) => twinsOf(state, id));
    return { ...effect, targets: [...new Set([...effect.targets, ...also])] };
  });
}

function twinsOf(state: RecordState, id: string): readonly string[] {
  const target = state.entries.find((entry) => entry.id === id);
  if (target === undefined) return [];
  const heard = heardIn(state);
  const found: string[] = [];
  let last = target;
  for (let at = heard.findLastIndex(({ entries }) => entries.includes(target)) - 1; at >= 0; at -= 1) {
    const twin = heard[at]?.entries.find((entry) => stands(entry) && isReadBack(entry, last));
    if (twin === undefined) break;
    found.push(twin.id);
    last = twin;
  }
  return found;
}

interface Heard {
  readonly utterance: string;
  readonly entries: readonly Entry[];
}

/** What each utterance entered, in order, without those that entered nothing of substance ("roger"). */
function heardIn(state: RecordState): readonly Heard[] {
  const byId = new Map(state.entries.map((entry) => [entry.id, entry]));
  const all = new Map<string, Entry[]>();
  for (const { utterance, entries } of state.groups) {
    if (utterance === null) continue;
    const said = entries.flatMap((id) => byId.get(id) ?? []).filter(isSubstance);
    if (said.length > 0) all.set(utterance, [...(all.get(utterance) ?? []), ...said]);
  }
  return [...all].map(([utterance, entries]) => ({ utterance, entries }));
}

function isReadBack(entry: Entry, later: Entry): boolean {
  const isSoon = Math.abs(Date.parse(later.heardAt) - Date.parse(entry.heardAt)) <= SOON_MS;
  // "Pulse ninety at two, pulse ninety at ten past" are two readings.
  const isOneTime = entry.at === later.at || later.at === later.heardAt;
  return isSoon && isOneTime && isSame(statementOf(entry), statementOf(later));
}

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
