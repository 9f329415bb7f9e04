// The post's log: a line counts once it is on the disk, a torn end is cut off, and a line that was altered costs only itself.

import { appendFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type OpenDisk, openOnDisk } from '../../src/post/disk.ts';
import { type Kept, type Logged, openLog } from '../../src/post/log.ts';

let path: string;
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fieldsay-log-'));
  path = join(folder, 'log.ndjson');
});
afterEach(() => rmSync(folder, { recursive: true }));

const logged = (place: number): Logged => ({
  subject: `rec.invented.ada-1.${place}`,
  bytes: new Uint8Array([1, place, 0, 255]),
  place,
  made: 'stream',
  at: 1_000 + place,
});

async function reopened(): Promise<{
  readonly all: readonly Kept[];
  readonly torn: number;
  readonly unreadable: number;
}> {
  const all: Kept[] = [];
  const log = await openLog(path, async (one) => void all.push(one));
  await log.close();
  return { all, torn: log.torn, unreadable: log.unreadable };
}

describe('the log', () => {
  it('gives back what was added, in order, and each line by its place', async () => {
    const log = await openLog(path, async () => undefined);
    const added = await log.add([logged(1), logged(2)]);
    await log.add([logged(3)]);
    expect(added.kind === 'added' ? await log.read(added.spots[1] ?? { at: 0, length: 0 }) : null).toEqual(
      logged(2),
    );
    await log.close();
    expect((await reopened()).all.map((one) => one.logged)).toEqual([1, 2, 3].map(logged));
  });

  it('cuts off a last line that was torn, at every place where it may be, and goes on after it', async () => {
    const log = await openLog(path, async () => undefined);
    await log.add([logged(1)]);
    await log.close();
    const whole = readFileSync(path);
    const line = whole.toString('utf8');
    for (let cut = 1; cut < line.length; cut += 7) {
      writeFileSync(path, Buffer.concat([whole, whole.subarray(0, cut)]));
      const again = await reopened();
      expect(again).toMatchObject({ torn: cut, unreadable: 0 });
      expect(again.all).toHaveLength(1);
      expect(readFileSync(path).equals(whole)).toBe(true);
    }
  });

  it('counts a line in the middle that cannot be read, and reads every other', async () => {
    const log = await openLog(path, async () => undefined);
    await log.add([logged(1)]);
    await log.close();
    appendFileSync(path, 'not a line of ours\n');
    const later = await openLog(path, async () => undefined);
    expect(later.unreadable).toBe(1);
    await later.add([logged(2)]);
    await later.close();
    expect((await reopened()).all.map((one) => one.logged.place)).toEqual([1, 2]);
  });

  it('says that a line is added only after the disk was told to sync', async () => {
    const calls: string[] = [];
    const disk: OpenDisk = async (name) => {
      const file = await openOnDisk(name);
      return {
        ...file,
        write: async (bytes, at) => {
          calls.push('write');
          await file.write(bytes, at);
        },
        sync: async () => {
          await file.sync();
          calls.push('sync');
        },
      };
    };
    const log = await openLog(path, async () => undefined, disk);
    await log.add([logged(1), logged(2)]);
    calls.push('added');
    await log.close();
    expect(calls).toEqual(['write', 'sync', 'added']);
  });

  it('adds nothing where the sync fails, leaves no trace of it, and can be tried again', async () => {
    let fails = true;
    const disk: OpenDisk = async (name) => {
      const file = await openOnDisk(name);
      return {
        ...file,
        sync: async () => {
          if (fails) throw Object.assign(new Error('input/output error'), { code: 'EIO' });
          await file.sync();
        },
      };
    };
    const log = await openLog(path, async () => undefined, disk);
    expect(await log.add([logged(1)])).toEqual({ kind: 'failed', why: 'input/output error' });
    expect(readFileSync(path).length).toBe(0);
    fails = false;
    expect((await log.add([logged(1)])).kind).toBe('added');
    await log.close();
    expect((await reopened()).all).toHaveLength(1);
  });
});
