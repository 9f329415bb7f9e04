// Phones, the real messaging server and the post: what is told to the post is told once, in order, and for good.

import { afterEach, describe, expect, it } from 'vitest';
import { allAtPost, HINDRANCE, openPhone, openScene, type Phone, type Scene } from './scene.ts';

describe.skipIf(HINDRANCE !== '')(`a post${HINDRANCE === '' ? '' : ` (${HINDRANCE})`}`, () => {
  let scene: Scene | null = null;
  const phones: Phone[] = [];
  afterEach(async () => {
    for (const phone of phones.splice(0)) await phone.end();
    await scene?.end();
    scene = null;
  });

  it('has each event once and in order, and the phone knows it only from its word', async () => {
    scene = await openScene();
    const { post } = scene;
    const code = await post.issue('Rae');
    const phone = await openPhone(post, code);
    phones.push(phone);
    for (let count = 0; count < 30; count += 1) phone.log();
    await phone.until(allAtPost);
    expect(post.desk.counts).toMatchObject({ logged: 30, again: 0, foreign: 0 });
    const events = await post.desk.records.events(phone.facts.id);
    expect(events.map(({ id }) => id)).toEqual(phone.events.map(({ id }) => id));
    expect(post.desk.devices()).toMatchObject([{ here: 30, troubles: [] }]);
  });
});
