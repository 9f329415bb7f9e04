// Whoever lies about who they are or what was said: the server lets no device speak for another, and the post takes in
// nothing that was altered, replayed or forged, and says so.

import { afterEach, describe, expect, it } from 'vitest';
import {
  barWords,
  chainOf,
  createMemoryLedger,
  importKey,
  type JoinCode,
  type Message,
  random,
  recordSubject,
  seal,
} from '../../src/link/index.ts';
import {
  allAtPost,
  connected,
  HINDRANCE,
  inventedEvent,
  lineOf,
  openPhone,
  openScene,
  type Phone,
  type Scene,
} from './scene.ts';

const NOW = '2031-04-05T10:00:00Z';

/** A message as a device of ours would make it, for a test that then does something wrong with it. */
async function messageOf(code: JoinCode, seq: number, words: string, before?: string): Promise<Message> {
  return {
    v: 1,
    seq,
    before: before ?? (await chainOf(code.incident, code.device)),
    record: { id: 'rec-stranger', kind: 'live', title: '', startedAt: NOW },
    event: inventedEvent('page-stranger', seq + 1, NOW, words),
  };
}

describe.skipIf(HINDRANCE !== '')(`strangers${HINDRANCE === '' ? '' : ` (${HINDRANCE})`}`, () => {
  let scene: Scene | null = null;
  const ends: (() => unknown)[] = [];
  afterEach(async () => {
    for (const end of ends.splice(0).reverse()) await end();
    await scene?.end();
    scene = null;
  });
  const phoneOf = async (code: JoinCode, options: Parameters<typeof openPhone>[2] = {}): Promise<Phone> => {
    if (scene === null) throw new Error('no post');
    const phone = await openPhone(scene.post, code, options);
    ends.push(() => phone.end());
    return phone;
  };
  const rawLine = async (code: JoinCode) => {
    if (scene === null) throw new Error('no post');
    const line = lineOf(scene.post, code);
    ends.push(() => line.close());
    await connected(line);
    return line;
  };
  const troubles = () => scene?.post.desk.devices().flatMap((one) => one.troubles) ?? [];

  it('a device cannot publish as another, hear what another is told, or read the stream', async () => {
    scene = await openScene();
    const { post } = scene;
    const [ada, ben] = [await post.issue('Ada'), await post.issue('Ben')];
    const line = await rawLine(ben);
    const key = await importKey(ben.key);
    const forged = recordSubject(ada.incident, ada.device, 1);
    const heard: string[] = [];
    line.hear(`got.${ada.incident}.${ada.device}`, ({ subject }) => heard.push(subject));
    line.hear(`rec.>`, ({ subject }) => heard.push(subject));
    expect(await line.store(forged, await seal(key, forged, await messageOf(ada, 1, 'forged')))).toEqual({
      kind: 'refused',
      why: 'this device may not publish there',
    });
    for (const subject of [
      '$JS.API.STREAM.INFO.RECORDS',
      '$JS.API.STREAM.MSG.GET.RECORDS',
      '$JS.API.STREAM.DELETE.RECORDS',
      `ask.${ada.incident}.${ada.device}`,
    ])
      expect((await line.ask(subject, new Uint8Array(), 700)).kind).not.toBe('answer');
    const phone = await phoneOf(ada);
    phone.log();
    await phone.until(allAtPost);
    expect(heard).toEqual([]);
    expect(post.desk.counts).toMatchObject({ logged: 1, foreign: 0 });
    expect((await post.desk.records.events('rec-stranger')).length).toBe(0);
  });

  it('a message that was altered, is sealed with another key, or was moved to another place enters nothing, and is said', async () => {
    scene = await openScene();
    const { post } = scene;
    const code = await post.issue('Ada');
    const line = await rawLine(code);
    const [key, other] = [await importKey(code.key), await importKey(random(32))];
    const at = (seq: number) => recordSubject(code.incident, code.device, seq);
    const whole = await seal(key, at(1), await messageOf(code, 1, 'as it was said'));
    const altered = whole.slice();
    altered[40] = (altered[40] ?? 0) ^ 1;
    await line.store(at(1), altered);
    await line.store(at(2), whole);
    await line.store(at(3), await seal(other, at(3), await messageOf(code, 3, 'with another key')));
    await line.store(at(4), new TextEncoder().encode('{"words":"in the open"}'));
    await line.store(
      at(5),
      await seal(key, at(5), { ...(await messageOf(code, 5, 'with another number')), seq: 4 }),
    );
    await expect.poll(() => post.desk.counts.logged).toBe(5);
    await expect
      .poll(() => troubles().filter((one) => one.includes('cannot be read')))
      .toEqual([
        expect.stringContaining('Message 1 cannot be read: it was altered on its way'),
        expect.stringContaining('Message 2 cannot be read: it was altered on its way'),
        expect.stringContaining('Message 3 cannot be read: it was altered on its way'),
        'Message 4 cannot be read: it is not sealed. It is kept and not shown.',
        'Message 5 cannot be read: it calls itself number 4. It is kept and not shown.',
      ]);
    expect(post.desk.records.all()).toEqual([]);
  });

  it('what was spoiled on its way is sent again under a new number, once, and nothing is missing in the end', async () => {
    scene = await openScene();
    const { post } = scene;
    const code = await post.issue('Ada');
    const line = await rawLine(code);
    await line.store(recordSubject(code.incident, code.device, 2), new TextEncoder().encode('spoiled'));
    const phone = await phoneOf(code);
    for (let count = 0; count < 4; count += 1) phone.log(`remark ${count}`);
    await phone.until((state) => allAtPost(state) && state.tally.made === 5);
    const events = await post.desk.records.events(phone.facts.id);
    expect(events.map(({ id }) => id).sort()).toEqual(phone.events.map(({ id }) => id).sort());
    expect(troubles()).toEqual(['Message 2 cannot be read: it is not sealed. It is kept and not shown.']);
  });

  it('messages that are sent again do no harm, however often', async () => {
    scene = await openScene();
    const { post } = scene;
    const code = await post.issue('Ada');
    const phone = await phoneOf(code);
    for (let count = 0; count < 10; count += 1) phone.log();
    await phone.until(allAtPost);
    const line = await rawLine(code);
    const key = await importKey(code.key);
    const answers = new Set<string>();
    for (let seq = 1; seq <= 10; seq += 1) {
      const subject = recordSubject(code.incident, code.device, seq);
      const bytes = await seal(key, subject, await messageOf(code, seq, 'something else'));
      for (let again = 0; again < 5; again += 1) answers.add((await line.store(subject, bytes)).kind);
    }
    expect([...answers]).toEqual(['there-already']);
    await phone.until(allAtPost);
    expect(post.desk.counts).toMatchObject({ logged: 10 });
    expect(await post.desk.records.events('rec-stranger')).toEqual([]);
  });

  it('a message that does not follow the one before it is kept aside with all after it, and the phone is told', async () => {
    scene = await openScene();
    const { post } = scene;
    const code = await post.issue('Ada');
    const phone = await phoneOf(code);
    phone.log();
    phone.log();
    await phone.until(allAtPost);
    const line = await rawLine(code);
    const key = await importKey(code.key);
    const subject = recordSubject(code.incident, code.device, 3);
    await line.store(
      subject,
      await seal(key, subject, await messageOf(code, 3, 'forged with a stolen code', 'a'.repeat(64))),
    );
    await expect
      .poll(troubles)
      .toEqual([
        'Message 3 does not follow message 2: forged, or two phones use one code. From there on nothing is taken in; give the phone a fresh code.',
      ]);
    phone.log('the real third');
    const state = await phone.until(
      ({ word, tally }) => (word?.troubles.length ?? 0) > 0 && tally.onServer === 1,
    );
    expect(barWords(state, Date.now())).toMatchObject({
      tone: 'trouble',
      text: 'At the post: 2 of 3. 1 on the way.',
    });
    expect((await post.desk.records.events(phone.facts.id)).length).toBe(2);
    expect(await post.desk.records.events('rec-stranger')).toEqual([]);
    // With a fresh code all of it is sent anew, and what is there already is there once.
    const fresh = await phoneOf(await post.issue('Ada again'), {
      record: phone.facts.id,
      events: phone.events,
      page: `page-${code.device}`,
    });
    fresh.log('the fourth');
    await fresh.until(allAtPost);
    const events = await post.desk.records.events(phone.facts.id);
    expect(events.map(({ id }) => id)).toEqual(phone.events.map(({ id }) => id));
  });

  it('a second phone with a code that is in use sends nothing and is told why', async () => {
    scene = await openScene();
    const code = await scene.post.issue('Ada');
    const first = await phoneOf(code);
    first.log();
    await first.until(allAtPost);
    const second = await phoneOf(code, {
      install: 'another-phone',
      record: 'rec-second',
      page: 'page-second',
    });
    second.log();
    const state = await second.until(({ problem }) => problem !== null);
    expect(barWords(state, Date.now()).text).toBe('Another phone uses this code: nothing is sent.');
    first.log();
    await first.until(allAtPost);
    expect(scene.post.desk.counts.logged).toBe(2);
  });

  it('a phone that was put out is disconnected within seconds, is told, and is not let in again', async () => {
    scene = await openScene();
    const code = await scene.post.issue('Ada');
    const ledger = createMemoryLedger('install');
    const phone = await phoneOf(code, { ledger });
    phone.log();
    await phone.until(allAtPost);
    expect(await scene.post.putOut(code.device)).toBe(true);
    const state = await phone.until(({ line }) => line === 'put-out');
    phone.log('after it');
    expect(barWords(state, Date.now()).text).toBe('Put out of the incident. At the post: 1 of 1.');
    const again = await phoneOf(code, { ledger, events: phone.events });
    await again.until(({ line }) => line === 'put-out');
    expect(scene.post.desk.counts.logged).toBe(1);
    expect(scene.post.desk.devices()).toMatchObject([{ out: true, here: 1 }]);
  });

  it('a post that lost its own disk is sent everything again by the phones and the server', async () => {
    scene = await openScene();
    const code = await scene.post.issue('Ada');
    const phone = await phoneOf(code);
    for (let count = 0; count < 20; count += 1) phone.log();
    await phone.until(allAtPost);
    const { rmSync } = await import('node:fs');
    const { folder } = scene;
    await scene.post.stop();
    rmSync(`${folder}/log.ndjson`);
    rmSync(`${folder}/server-1/jetstream`, { recursive: true });
    const post = await scene.again();
    await phone.until(({ tally }) => tally.atPost < tally.made);
    await phone.until(allAtPost);
    expect(post.desk.counts.logged).toBe(20);
    expect((await post.desk.records.events(phone.facts.id)).map(({ id }) => id)).toEqual(
      phone.events.map(({ id }) => id),
    );
  });
});
