// What the page does when it is asked by voice or in words, and what it says back of what it heard.

import { effect, untracked } from '@preact/signals';
import type { Command } from '../../parse/index.ts';
import type { RecordEvent } from '../../record/index.ts';
import { lastSaid } from '../talk/became.ts';
import { forgetConfirm } from '../voice/confirmed.ts';
import { echoOf, soundOf } from '../voice/echo.ts';
import type { Tools } from './tools.ts';

/** What may be asked for while a report is read over the radio, beside its own words. */
const OF_THE_RADIO: ReadonlySet<Command> = new Set([
  'close-sheet',
  'order-atmist',
  'order-imist-ambo',
  'order-sbar',
]);

/** Follows the record and acts on each new command. Commands of a played or reopened talk are passed over. */
export function obeyCommands(tools: Tools): void {
  const { desk, later, settled, player, panel, reading, echo, sounds, earcons, speaker, standby } = tools;
  let seen: { readonly record: string; readonly events: number } | null = null;
  effect(() => {
    const record = desk.record.value;
    if (record === null) {
      seen = null;
      return;
    }
    const { events, state } = record.exam;
    // The first look at a record finds old events: what was asked then was answered then.
    const fresh = seen === null || seen.record !== record.facts.id ? 0 : events.length - seen.events;
    const begun = seen === null && events.length <= 4 ? events : [];
    seen = { record: record.facts.id, events: events.length };
    if (player.playing.peek() !== null) return;
    const news = fresh > 0 ? events.slice(-fresh) : begun;
    if (news.length > 0) untracked(() => forgetConfirm(tools.desk));
    // After anything else a word would answer a question that nobody has in mind any more.
    if (news.some(({ kind }) => kind !== 'utterance' && kind !== 'command')) settled.readAloud.value = null;
    for (const event of news) obey(event);
    if (news.some(({ kind }) => kind === 'utterance')) sayBack(events, state);
  });

  /** The echo and the short sound of the last utterance; a radio that is being read over hears neither. */
  function sayBack(
    events: readonly RecordEvent[],
    state: NonNullable<typeof desk.record.value>['exam']['state'],
  ) {
    if (standby.peek() || reading.peek() !== null) return;
    const [latest] = lastSaid(events, state, 1);
    if (latest === undefined) return;
    const sound = soundOf(latest);
    if (sounds.peek() === 'on' && sound !== null) earcons.play(sound);
    const words = echoOf(latest, echo.peek());
    if (words !== '') speaker.speak(words);
  }

  function obey(event: RecordEvent): void {
    if (event.kind !== 'command') return;
    const { payload } = event;
    // Whoever reads over the radio is asked for nothing else, and is not taken off the page.
    const open = reading.peek();
    switch (payload.command) {
      case 'next-piece':
        if (open === null) panel.value = 'report';
        else open.next();
        return;
      case 'last-piece':
        open?.back();
        return;
      case 'say-again':
        if (open !== null) {
          open.again();
          return;
        }
    }
    if (open === null || OF_THE_RADIO.has(payload.command))
      untracked(() => later.peek()?.answer(tools, payload));
  }
}
