// Devices are kept on the post's disk, many at once too, and a code belongs to the phone that used it first.

import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openDevices } from '../../src/post/devices.ts';

const NOW = '2031-04-05T10:00:00Z';
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fieldsay-devices-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

describe('devices', () => {
  it('are all kept where many are let in and claimed at the same moment', async () => {
    const path = join(folder, 'devices.json');
    const devices = await openDevices(path);
    const issued = await Promise.all(
      Array.from({ length: 30 }, (_, index) => devices.issue(`Invented ${index}`, NOW)),
    );
    const claims = await Promise.all(
      issued.map(({ device }) => devices.claim(device.device, `phone of ${device.device}`)),
    );
    expect(claims).toEqual(issued.map(({ device }) => `phone of ${device.device}`));
    const again = await openDevices(path);
    expect(again.all()).toEqual(devices.all());
    expect(new Set(again.all().map(({ device }) => device)).size).toBe(30);
    expect(JSON.stringify(again.all())).not.toContain(issued[0]?.seed);
    expect(statSync(path).mode & 0o077).toBe(0);
  });

  it('are named so that a list can be read, and a subject holds the name', async () => {
    const devices = await openDevices(join(folder, 'devices.json'));
    const names = [];
    for (const name of ['Rae Örn', '  ', 'a.b > *']) names.push((await devices.issue(name, NOW)).device);
    expect(names.map(({ device }) => device)).toEqual(['rae-orn-1', 'phone-2', 'a-b-3']);
    expect(names.map(({ name }) => name)).toEqual(['Rae Örn', 'Phone 2', 'a.b > *']);
  });

  it('keep the first phone that used a code, and are put out once', async () => {
    const devices = await openDevices(join(folder, 'devices.json'));
    const { device } = (await devices.issue('Rae', NOW)).device;
    expect(await devices.claim(device, 'first')).toBe('first');
    expect(await devices.claim(device, 'second')).toBe('first');
    expect(await devices.putOut(device, NOW)).toBe(true);
    expect(await devices.putOut(device, NOW)).toBe(false);
    expect(await devices.putOut('nobody-9', NOW)).toBe(false);
  });

  it('that cannot be written do not count', async () => {
    const devices = await openDevices(join(folder, 'gone', 'devices.json'));
    await expect(devices.issue('Rae', NOW)).rejects.toThrow();
    expect(devices.all()).toEqual([]);
  });
});
