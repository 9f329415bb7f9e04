// A board's row is reckoned by the clock that its record was written by, and names who began it and who writes it.

import { afterEach, describe, expect, it } from 'vitest';
import { createRows } from '../../src/post/rows.ts';
import { allAtPost, HINDRANCE, inventedEvent, openPhone, openScene, type Scene } from './scene.ts';

const HOUR = 3_600_000;

describe.skipIf(HINDRANCE !== '')(`a row${HINDRANCE === '' ? '' : ` (${HINDRANCE})`}`, () => {
  let scene: Scene | null = null;
  afterEach(async () => {
    await scene?.end();
    scene = null;
  });

  it.each([-HOUR, 0, HOUR])(
    'of a phone whose clock is %i ms off says no vitals overdue that were just taken',
    async (ahead) => {
      scene = await openScene();
      const phone = await openPhone(scene.post, await scene.post.issue('Ada'), { ahead });
      const time = new Date(Date.now() + ahead).toISOString();
      const page = `page-${phone.code.device}`;
      const pulse = {
        id: `${page}-2`,
        statement: { kind: 'vital', vital: 'pulse', value: { rate: 80 } },
        at: time,
        heardAt: time,
        heard: 'pulse eighty',
        known: {},
        doubt: [],
        utterance: null,
        group: 'g',
      };
      const entered = { ...inventedEvent(page, 2, time), kind: 'entered', payload: pulse };
      phone.events.push(inventedEvent(page, 1, time), entered);
      phone.session.offer(phone.facts, phone.events);
      await phone.until((state) => allAtPost(state) && state.wordAt !== null);
      const [row] = await createRows(scene.post.desk, Date.now).read();
      expect(row).toMatchObject({
        begunBy: 'Ada',
        writer: 'Ada',
        due: null,
        overdueMinutes: 0,
        entries: 1,
        unconfirmed: 1,
      });
      expect(row?.vitals).toMatchObject([{ name: 'Pulse', confirmed: false }]);
      expect(Math.abs((row?.heardAt ?? 0) - Date.now())).toBeLessThan(30_000);
      // Ten minutes on, they are due.
      const [later] = await createRows(scene.post.desk, () => Date.now() + 600_000).read();
      expect(later?.due).toMatch(/^Vitals are due/);
      await phone.end();
    },
  );
});
