// What the page tells after a spoken "confirm": what it confirmed, what the next one would, and where it confirmed nothing, why.

import { type Entry, nextToConfirm, type RecordEvent, type RecordState } from '../../record/index.ts';
import type { Desk } from '../desk/index.ts';
import { entriesOf, lastSaid } from '../talk/became.ts';
import { type Echo, entryAloud } from './echo.ts';

export interface ToldOfConfirm {
  /** to be shown; null where the entries themselves show it all */
  readonly shown: string | null;
  /** to be said; empty where nothing is */
  readonly spoken: string;
}

const list = (entries: readonly Entry[], echo: Exclude<Echo, 'off'>): string =>
  entries.map((entry) => entryAloud(entry, echo)).join('. ');

/** Said once, in front. */
const bare = (entry: Entry): Entry => ({ ...entry, state: 'heard' });

/** True of what is shown after a confirm. */
const isOfConfirm = (text: string): boolean => /^(?:Confirmed|Nothing was confirmed): /.test(text);

/** Takes away what was told of a confirm: after anything else, another entry would be confirmed next. */
export function forgetConfirm({ notice }: Pick<Desk, 'notice'>): void {
  if (isOfConfirm(notice.peek()?.text ?? '')) notice.value = null;
}

/** Of the latest words, which asked to confirm; what was confirmed is said again only where entries are. */
export function toldOfConfirm(events: readonly RecordEvent[], state: RecordState, echo: Echo): ToldOfConfirm {
  const [latest] = lastSaid(events, state, 1);
  const confirmed = (latest?.outcomes ?? []).flatMap((outcome) =>
    outcome.kind === 'confirmed' ? outcome.entries.map(bare) : [],
  );
  const next = nextToConfirm(state);
  if (confirmed.length === 0) {
    const told = `Nothing was confirmed: ${whyNone(events, state)}.`;
    return { shown: told, spoken: told };
  }
  const said =
    echo === 'off' ? '' : confirmed.map((entry) => `confirmed: ${entryAloud(entry, echo)}.`).join(' ');
  if (next.length === 0) return { shown: null, spoken: said };
  const more = `To confirm next: ${list(next, 'short')}.`;
  return { shown: `Confirmed: ${list(confirmed, 'short')}. ${more}`, spoken: `${said} ${more}`.trim() };
}

function whyNone(events: readonly RecordEvent[], state: RecordState): string {
  if (nextToConfirm(state).length > 0) return 'say “confirm” by itself';
  const [latest] = lastSaid(events, state, 12)
    .map(entriesOf)
    .filter((entries) => entries.length > 0);
  const asks = latest?.some((entry) => entry.state === 'heard' && entry.doubt !== undefined) === true;
  return asks ? 'a question is open' : 'nothing of the last words waits';
}
