// What breaks on a mountainside: servers and posts that are killed, wires that are cut, disks that are full, clocks that are
// wrong. Nothing that a phone was told is at the post is lost, nothing is there twice, and each fault is said.

import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { barWords, inboxOf } from '../../src/link/index.ts';
import { dialServers } from '../../src/link/node/index.ts';
import { type OpenDisk, openOnDisk } from '../../src/post/disk.ts';
import { type PostChild, startChild, subjectsIn } from './child.ts';
import { openCutter } from './cutter.ts';
import { allAtPost, freePorts, HINDRANCE, openPhone, openScene, type Phone, type Scene } from './scene.ts';

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** A disk whose log file takes only so many bytes, as a full one does: part of a write may still be done. */
function smallDisk(): { readonly open: OpenDisk; room: number } {
  const disk = {
    room: 20_000,
    open: async (path: string) => {
      const file = await openOnDisk(path);
      return {
        ...file,
        write: async (bytes: Uint8Array, at: number) => {
          await file.write(bytes.subarray(0, Math.max(0, disk.room - at)), at);
          if (at + bytes.length > disk.room)
            throw Object.assign(new Error('no space left'), { code: 'ENOSPC' });
        },
      };
    },
  };
  return disk;
}

/** A small file system of its own in memory, or why there is none. */
function mountSmall(): { readonly folder: string; readonly end: () => void } | string {
  const folder = mkdtempSync(join(tmpdir(), 'fieldsay-full-'));
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=256k', 'tmpfs', folder], { stdio: 'ignore' });
  } catch {
    rmSync(folder, { recursive: true });
    return 'skipped: a small file system cannot be mounted here (needs root)';
  }
  return {
    folder,
    end: () => {
      execFileSync('umount', [folder]);
      rmSync(folder, { recursive: true });
    },
  };
}

describe.skipIf(HINDRANCE !== '')(`with faults${HINDRANCE === '' ? '' : ` (${HINDRANCE})`}`, () => {
  let scene: Scene | null = null;
  const phones: Phone[] = [];
  const ends: (() => unknown)[] = [];
  afterEach(async () => {
    for (const phone of phones.splice(0)) await phone.end();
    await scene?.end();
    scene = null;
    for (const end of ends.splice(0).reverse()) await end();
  });
  const crew = async (
    count: number,
    options: Parameters<typeof openPhone>[2] = {},
  ): Promise<readonly Phone[]> => {
    if (scene === null) throw new Error('no post');
    for (let one = 1; one <= count; one += 1)
      phones.push(await openPhone(scene.post, await scene.post.issue(`Invented ${one}`), options));
    return phones;
  };
  const sameOrder = async (): Promise<void> => {
    for (const phone of phones) {
      const events = (await scene?.post.desk.records.events(phone.facts.id)) ?? [];
      expect(events.map(({ id }) => id)).toEqual(phone.events.map(({ id }) => id));
    }
  };

  it('a server that is killed under load, twice, is started again and nothing is lost or twice', async () => {
    scene = await openScene();
    await crew(5);
    const pids = new Set<number>();
    for (let count = 0; count < 40; count += 1) {
      for (const phone of phones) phone.log();
      const pid = scene.post.servers[0]?.pid() ?? null;
      if ((count === 10 || count === 30) && pid !== null) {
        pids.add(pid);
        process.kill(pid, 'SIGKILL');
      }
      await wait(100);
    }
    for (const phone of phones) await phone.until(allAtPost, 30_000);
    expect(pids.size).toBe(2);
    expect(scene.post.desk.counts.logged).toBe(200);
    await sameOrder();
  });

  it('a post that is killed under load has on its disk all that it gave a receipt for, and goes on from there', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'fieldsay-killed-'));
    const ports = await freePorts();
    let child: PostChild = await startChild(folder, ports);
    ends.push(
      () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }),
      () => child.end(),
    );
    const webPorts = [ports.web];
    for (const name of ['Ada', 'Ben', 'Cyd'])
      phones.push(await openPhone({ webPorts }, await child.issue(name)));
    let told: readonly number[] = [];
    for (let count = 0; count < 60; count += 1) {
      for (const phone of phones) phone.log();
      if (count === 30) {
        await child.kill();
        told = phones.map((phone) => phone.session.state().tally.atPost);
      }
      await wait(20);
    }
    const onDisk = subjectsIn(folder);
    for (const [index, phone] of phones.entries())
      expect(onDisk.filter((one) => one.includes(`.${phone.code.device}.`)).length).toBeGreaterThanOrEqual(
        told[index] ?? 0,
      );
    expect(told.reduce((sum, one) => sum + one, 0)).toBeGreaterThan(0);
    child = await startChild(folder, ports);
    for (const phone of phones) await phone.until(allAtPost, 30_000);
    const after = subjectsIn(folder);
    expect(after).toHaveLength(180);
    expect(new Set(after).size).toBe(180);
  });

  it('a server that lost what its disk had not synced, as on a power failure, keeps nothing from the post afterwards', async () => {
    scene = await openScene();
    const [phone] = await crew(1);
    const store = join(scene.folder, 'server-1', 'jetstream');
    for (let count = 0; count < 10; count += 1) phone?.log();
    await phone?.until(allAtPost);
    await scene.post.stop();
    const older = mkdtempSync(join(tmpdir(), 'fieldsay-older-'));
    ends.push(() => rmSync(older, { recursive: true }));
    cpSync(store, older, { recursive: true });
    await scene.again();
    for (let count = 0; count < 10; count += 1) phone?.log();
    await phone?.until(allAtPost);
    await scene.post.stop();
    // Its disk is as it was ten messages ago: it will give their numbers out again.
    rmSync(store, { recursive: true });
    cpSync(older, store, { recursive: true });
    await scene.again();
    for (let count = 0; count < 5; count += 1) phone?.log();
    await phone?.until(allAtPost);
    expect(subjectsIn(scene.folder)).toHaveLength(25);
    expect(new Set(subjectsIn(scene.folder)).size).toBe(25);
    await sameOrder();
  });

  it('links that are cut are said, what is logged meanwhile waits, and then all is sent in order', async () => {
    scene = await openScene();
    const cutter = await openCutter(scene.ports.client);
    ends.push(() => cutter.close());
    const code = await scene.post.issue('Invented');
    const line = dialServers([`127.0.0.1:${cutter.port}`], { seed: code.seed, inbox: inboxOf(code.device) });
    const phone = await openPhone(scene.post, code, { line });
    phones.push(phone);
    for (let count = 0; count < 10; count += 1) phone.log();
    await phone.until(allAtPost);
    cutter.cut();
    for (let count = 0; count < 50; count += 1) phone.log();
    const cut = await phone.until(({ line: now, tally }) => now === 'cut' && tally.made === 60);
    expect(barWords(cut, Date.now()).text).toBe('At the post: 10 of 60. 50 wait: no connection.');
    await wait(2_500);
    expect(scene.post.desk.counts.logged).toBe(10);
    cutter.join();
    await phone.until(allAtPost);
    expect(scene.post.desk.counts).toMatchObject({ logged: 60, again: 0 });
    await sameOrder();
  });

  it('a full disk (made up: the write fails as one does) gives no receipt, is said, and is caught up once there is room', async () => {
    const disk = smallDisk();
    scene = await openScene({ disk: disk.open });
    const [phone] = await crew(1);
    for (let count = 0; count < 100; count += 1) phone?.log();
    await expect
      .poll(() => scene?.post.desk.troubles())
      .toEqual([expect.stringContaining('NOT WRITTEN at the post: the disk of the post is full')]);
    await wait(500);
    const tally = phone?.session.state().tally;
    expect(tally?.atPost).toBe(scene.post.desk.counts.logged);
    expect(tally?.atPost).toBeLessThan(100);
    disk.room = 10_000_000;
    await phone?.until(allAtPost);
    expect(scene.post.desk.troubles()).toEqual([]);
    await sameOrder();
    await scene.again({ disk: openOnDisk });
    expect(scene.post.desk.log).toMatchObject({ torn: 0, unreadable: 0 });
    await sameOrder();
  });

  it('a full file system (a real one of 256 kB) gives no receipt, and nothing is lost once there is room', async ({
    skip,
  }) => {
    const small = mountSmall();
    if (typeof small === 'string') return skip(small);
    ends.push(small.end);
    mkdirSync(join(small.folder, 'log'));
    scene = await openScene({ logFolder: join(small.folder, 'log') });
    const [phone] = await crew(1);
    const ballast = join(small.folder, 'ballast');
    execFileSync('sh', ['-c', `dd if=/dev/zero of=${ballast} bs=1k count=1000 2>/dev/null; true`]);
    for (let count = 0; count < 60; count += 1) phone?.log();
    await expect.poll(() => scene?.post.desk.troubles().join()).toContain('the disk of the post is full');
    expect(phone?.session.state().tally.atPost).toBe(scene.post.desk.counts.logged);
    rmSync(ballast);
    await phone?.until(allAtPost);
    expect(scene.post.desk.counts.logged).toBe(60);
    await sameOrder();
    await scene.post.stop();
  });

  it('a clock that is an hour ahead is said', async () => {
    scene = await openScene();
    const [ahead] = await crew(1, { ahead: 3_600_000 });
    ahead?.log();
    await ahead?.until(allAtPost);
    await expect
      .poll(() => scene?.post.desk.devices().flatMap(({ troubles }) => troubles))
      .toEqual(['Its clock is 60 min ahead of the post’s.']);
    const [device] = scene.post.desk.devices();
    expect(Math.abs((device?.ahead ?? 0) - 3_600_000)).toBeLessThan(2_000);
    expect(Math.abs((device?.heardAt ?? 0) - Date.now())).toBeLessThan(10_000);
  });
});
