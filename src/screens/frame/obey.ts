// What the page does when it is asked by voice or in words: it shows what was asked for.

import { effect } from '@preact/signals';
import type { RecordEvent } from '../../record/index.ts';
import { done } from '../desk/index.ts';
import type { Tools } from './tools.ts';

/** Follows the record and shows what each new command asks for. Commands of a played or reopened talk are passed over. */
export function obeyCommands({ desk, player, panel, sheet, reading }: Tools): void {
  let seen: { readonly record: string; readonly events: number } | null = null;
  effect(() => {
    const record = desk.record.value;
    if (record === null) {
      seen = null;
      return;
    }
    const { events } = record.exam;
    // The first look at a record finds old events: what was asked then was answered then.
    const fresh = seen === null || seen.record !== record.facts.id ? 0 : events.length - seen.events;
    const begun = seen === null && events.length <= 4 ? events : [];
    seen = { record: record.facts.id, events: events.length };
    if (player.playing.peek() !== null) return;
    for (const event of fresh > 0 ? events.slice(-fresh) : begun) obey(event);
  });

  function obey(event: RecordEvent): void {
    if (event.kind !== 'command') return;
    // Whoever reads over the radio is asked for nothing else, and is not taken off the page.
    const open = reading.peek();
    switch (event.payload.command) {
      case 'next-piece':
        if (open === null) panel.value = 'report';
        else open.next();
        return;
      case 'last-piece':
        open?.back();
        return;
      case 'say-again':
        if (open === null) panel.value = 'report';
        else open.again();
        return;
    }
    if (open !== null) return;
    switch (event.payload.command) {
      case 'whats-left':
        panel.value = 'body';
        break;
      case 'read-back':
        panel.value = 'report';
        break;
      case 'help':
        sheet.value = 'more';
        break;
      case 'stand-by':
        desk.notice.value = done('Standing by. What is said is still recorded.');
        break;
      case 'go-ahead':
        desk.notice.value = done('Going on.');
        break;
      case 'confirm':
        break;
    }
  }
}
