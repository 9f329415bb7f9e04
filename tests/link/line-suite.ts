// What every line must do, whatever carries it; the one in memory and the real ones pass the same.

import { expect, it } from 'vitest';
import type { Bytes, Line, Stream } from '../../src/link/index.ts';
import { recordSubject } from '../../src/link/index.ts';

export interface Ends {
  readonly incident: string;
  /** a device's name and its line, allowed to publish as itself only */
  readonly ada: { readonly device: string; readonly line: Line };
  readonly ben: { readonly device: string; readonly line: Line };
  readonly post: Line;
  readonly stream: Stream;
}

const bytes = (text: string): Bytes => new TextEncoder().encode(text);
const text = (some: Bytes): string => new TextDecoder().decode(some);
const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Registers the tests; `ends` gives connected ends of one server. */
export function lineSuite(ends: () => Ends): void {
  it('keeps one message on a subject, however often it is sent', async () => {
    const { incident, ada, stream } = ends();
    const subject = recordSubject(incident, ada.device, 1);
    expect(await ada.line.store(subject, bytes('first'))).toEqual({ kind: 'stored', by: null });
    for (let again = 0; again < 3; again += 1)
      expect(await ada.line.store(subject, bytes('second'))).toEqual({ kind: 'there-already' });
    const found = await stream.find(subject);
    expect(found === null ? null : text(found.bytes)).toBe('first');
  });

  it('lets a device publish as itself only', async () => {
    const { incident, ada, ben, stream } = ends();
    const subject = recordSubject(incident, ada.device, 2);
    expect(await ben.line.store(subject, bytes('forged'))).toEqual({
      kind: 'refused',
      why: 'this device may not publish there',
    });
    expect(await stream.find(subject)).toBeNull();
  });

  it('gives the messages in the order in which they were stored, from any place on, old and new', async () => {
    const { incident, ada, ben, stream } = ends();
    const took: { readonly subject: string; readonly place: number }[] = [];
    const stored = (seq: number) => ada.line.store(recordSubject(incident, ada.device, seq), bytes(`${seq}`));
    for (let seq = 11; seq <= 15; seq += 1) await stored(seq);
    const stop = stream.follow(null, ({ subject, place }) => took.push({ subject, place }));
    for (let seq = 16; seq <= 20; seq += 1) await stored(seq);
    await ben.line.store(recordSubject(incident, ben.device, 1), bytes('1'));
    await expect
      .poll(() => took.filter(({ subject }) => subject.includes('.1')).length)
      .toBeGreaterThanOrEqual(10);
    await expect.poll(() => took.at(-1)?.subject).toBe(recordSubject(incident, ben.device, 1));
    stop();
    const own = took.filter(({ subject }) => subject.startsWith(`rec.${incident}.${ada.device}.`)).slice(-10);
    expect(own.map(({ subject }) => Number(subject.split('.')[3]))).toEqual([
      11, 12, 13, 14, 15, 16, 17, 18, 19, 20,
    ]);
    expect(took.map(({ place }) => place)).toEqual([...took].map(({ place }) => place).sort((a, b) => a - b));
    const later: number[] = [];
    const after = took.at(-2) ?? null;
    const stopLater = stream.follow(after, ({ place }) => later.push(place));
    await expect.poll(() => later).toEqual([took.at(-1)?.place]);
    stopLater();
  });

  it('gives all messages again where it has another one at that place than was read there', async () => {
    const { incident, ada, stream } = ends();
    const stored = (seq: number) => ada.line.store(recordSubject(incident, ada.device, seq), bytes(`${seq}`));
    for (let seq = 31; seq <= 33; seq += 1) await stored(seq);
    const last = await stream.find(recordSubject(incident, ada.device, 33));
    const elsewhere = { place: last?.place ?? 0, subject: recordSubject(incident, ada.device, 999) };
    for (const after of [elsewhere, { ...elsewhere, place: elsewhere.place + 1_000 }]) {
      const places: number[] = [];
      const stop = stream.follow(after, ({ place }) => places.push(place));
      await expect.poll(() => places.at(-1)).toBe(last?.place);
      expect(places).toContain(1);
      stop();
    }
  });

  it('carries a question and its answer, and says where nobody listens', async () => {
    const { incident, ada, post } = ends();
    const subject = `ask.${incident}.${ada.device}`;
    expect((await ada.line.ask(subject, bytes('hello'), 2_000)).kind).toBe('nobody');
    const stop = post.hear(`ask.${incident}.*`, ({ bytes: asked, reply }) => {
      if (reply !== null) post.tell(reply, bytes(`you said ${text(asked)}`));
    });
    await wait(100);
    const answer = await ada.line.ask(subject, bytes('hello'), 5_000);
    expect(answer.kind === 'answer' ? text(answer.bytes) : answer.kind).toBe('you said hello');
    stop();
  });

  it('lets a device hear what is said to it and nothing that is said to another', async () => {
    const { incident, ada, ben, post } = ends();
    const heard: string[] = [];
    ada.line.hear(`got.${incident}.${ada.device}`, (one) => heard.push(`ada ${text(one.bytes)}`));
    ben.line.hear(`got.${incident}.${ada.device}`, (one) => heard.push(`ben ${text(one.bytes)}`));
    await wait(200);
    post.tell(`got.${incident}.${ada.device}`, bytes('a word'));
    await expect.poll(() => heard).toEqual(['ada a word']);
    await wait(200);
    expect(heard).toEqual(['ada a word']);
  });

  it('lets one device ask another and be answered', async () => {
    const { incident, ada, ben } = ends();
    const stop = ben.line.hear(`pass.${incident}.${ben.device}.*`, ({ reply }) => {
      if (reply !== null) ben.line.tell(reply, bytes('yes'));
    });
    await wait(200);
    const answer = await ada.line.ask(`pass.${incident}.${ben.device}.${ada.device}`, bytes('offer'), 5_000);
    expect(answer.kind === 'answer' ? text(answer.bytes) : answer.kind).toBe('yes');
    stop();
  });

  it('stores nothing once it is closed, and says so', async () => {
    const { incident, ben } = ends();
    await ben.line.close();
    expect(await ben.line.store(recordSubject(incident, ben.device, 99), bytes('late'))).toEqual({
      kind: 'not-reached',
    });
    expect((await ben.line.ask(`ask.${incident}.${ben.device}`, bytes('late'), 500)).kind).toBe(
      'not-reached',
    );
  });
}
