// Out of range nobody says goodbye: a wire that falls silent, a post that stands still. What was logged arrives all the same.

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { barWords, inboxOf } from '../../src/link/index.ts';
import { dialPost } from '../../src/link/page/index.ts';
import { serve, type Web } from '../../src/post/web/serve.ts';
import { type Cutter, openCutter } from './cutter.ts';
import { allAtPost, HINDRANCE, openPhone, openScene, type Phone, type Scene } from './scene.ts';

const WHY = HINDRANCE !== '' || 'WebSocket' in globalThis ? HINDRANCE : 'skipped: this Node has no WebSocket';

describe.skipIf(WHY !== '')(`a silent wire${WHY === '' ? '' : ` (${WHY})`}`, () => {
  let scene: Scene;
  let web: Web;
  let cutter: Cutter;
  let phone: Phone | null = null;
  beforeEach(async () => {
    scene = await openScene();
    web = await serve(async () => undefined, scene.post.webPorts, { host: '127.0.0.1', port: 0 });
    cutter = await openCutter(web.port);
  });
  afterEach(async () => {
    await phone?.end();
    phone = null;
    await cutter.close();
    await web.close();
    await scene.end();
  });
  /** A phone as in a browser: a WebSocket to the page's own address. */
  const open = async (): Promise<Phone> => {
    const code = await scene.post.issue('Invented');
    const line = dialPost(`http://127.0.0.1:${cutter.port}/`, {
      seed: code.seed,
      inbox: inboxOf(code.device),
    });
    phone = await openPhone(scene.post, code, { line });
    return phone;
  };

  it('that answers no dial holds up nothing once another dial can be answered', async () => {
    cutter.silence();
    const here = await open();
    for (let count = 0; count < 5; count += 1) here.log();
    await here.until(({ line }) => line === 'cut');
    cutter.join();
    await here.until(allAtPost, 30_000);
    expect(scene.post.desk.counts).toMatchObject({ logged: 5, again: 0 });
  });

  it('that takes what is sent and brings no answer is noticed, is said, and all is sent on another', async () => {
    const here = await open();
    here.log();
    await here.until(allAtPost);
    cutter.silence();
    // More than the wire itself holds, so that some is left in the page.
    for (let count = 0; count < 40; count += 1) here.log(`invented remark ${'x'.repeat(200_000)}`);
    await here.session.settled();
    expect(here.session.state().tally).toMatchObject({ made: 41, atPost: 1, waiting: 40 });
    const state = await here.until(({ line }) => line === 'cut', 60_000);
    expect(barWords(state, Date.now()).text).toBe('At the post: 1 of 41. 40 wait: no connection.');
    cutter.join();
    await here.until(allAtPost, 60_000);
    expect(scene.post.desk.counts.logged).toBe(41);
  });

  it('does not hold up a phone that leaves', async () => {
    const here = await open();
    here.log();
    await here.until(allAtPost);
    cutter.silence();
    for (let count = 0; count < 40; count += 1) here.log(`invented remark ${'x'.repeat(200_000)}`);
    await here.session.settled();
    await expect(here.end()).resolves.toBeUndefined();
  }, 30_000);
});
