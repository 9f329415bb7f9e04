// Makes the page follow the one that writes, and go on from there when it may write itself.

import { effect, untracked } from '@preact/signals';
import { joinPages, type Pages } from '../../record/store/index.ts';
import { sayWaiting } from '../desk/index.ts';
import type { Tools } from '../frame/tools.ts';
import { lockPage } from './lock.ts';
import { openKept, openLast } from './restore.ts';

/** Joins the other pages of this browser. */
export function joinOthers(tools: Tools): Pages {
  const { desk } = tools;
  let next: string | null = null;
  let reading = false;

  const catchUp = async (): Promise<void> => {
    if (reading) return;
    reading = true;
    while (next !== null) {
      const id = next;
      next = null;
      const reader = desk.reader.value;
      if (reader !== null && desk.door.keys() !== null && desk.role.value === 'follows')
        await openKept(desk, reader, id);
    }
    reading = false;
  };
  const pages = joinPages(
    (role) => {
      const followed = desk.role.peek() === 'follows';
      desk.role.value = role;
      if (role === 'writes' && followed) void goOn();
    },
    (told) => {
      if (told.told === 'wiped') window.location.reload();
      else if (told.told === 'guarded') void desk.door.notice();
      else if (told.told === 'locked') void desk.door.notice().then(() => lockPage(tools));
      else if (desk.role.peek() === 'follows') {
        next = told.record;
        void catchUp();
      }
    },
  );
  /** What the other page wrote last is read before anything is added to it. */
  const goOn = async (): Promise<void> => {
    const reader = desk.reader.value;
    desk.role.value = 'asking';
    if (reader !== null) await openLast(desk, reader);
    desk.role.value = 'writes';
    sayWaiting(desk);
  };
  effect(() => {
    const kept = desk.keeper.kept.value;
    if (kept !== null) untracked(() => pages.tell({ told: 'kept', record: kept.record }));
  });
  let wasOpen = false;
  let wasBy = '';
  effect(() => {
    const now = desk.door.now.value;
    const { state } = now;
    const by = now.state === 'open' ? now.by : '';
    if (wasBy === 'device' && by === 'passphrase') pages.tell({ told: 'guarded' });
    wasBy = by;
    if (wasOpen && state === 'locked') pages.tell({ told: 'locked' });
    wasOpen = state === 'open';
  });
  return pages;
}
