// The devices of an incident: a code is issued once, used by one phone, and a lost one is put out; kept on the post's disk.

import { nkeys } from '@nats-io/nats-core';
import { NAME } from '../link/index.ts';
import { readJson, writeJson } from './json-file.ts';

export interface Device {
  readonly device: string;
  /** who carries it */
  readonly name: string;
  /** the public half of its nkey: all that the server is told */
  readonly nkey: string;
  /** ISO 8601 */
  readonly issuedAt: string;
  /** ISO 8601 where it was put out */
  readonly outAt: string | null;
  /** the phone that used the code first, or null */
  readonly install: string | null;
}

export interface Devices {
  all(): readonly Device[];
  get(device: string): Device | null;
  /** a new device with the seed that only its code holds */
  issue(name: string, at: string): Promise<{ readonly device: Device; readonly seed: string }>;
  /** true where it was in and is now out */
  putOut(device: string, at: string): Promise<boolean>;
  /** the phone that uses a code; the first one keeps it */
  claim(device: string, install: string): Promise<string>;
}

const isDevice = (one: unknown): one is Device =>
  typeof one === 'object' &&
  one !== null &&
  'device' in one &&
  NAME.test(String(one.device)) &&
  'nkey' in one;

/** `rae-3`: readable in a list, and never used twice. */
function nameFor(name: string, count: number): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 20);
  return `${plain === '' ? 'phone' : plain}-${count}`;
}

/** The devices as they were kept; rejects where the file is there and cannot be read. */
export async function openDevices(path: string): Promise<Devices> {
  const kept = await readJson(path);
  const all = new Map((Array.isArray(kept) ? kept.filter(isDevice) : []).map((one) => [one.device, one]));
  let writing: Promise<void> = Promise.resolve();
  let next: Promise<void> | null = null;
  /** One writing at a time, and all that came meanwhile in the next one: many phones join in the same moment. */
  const write = (): Promise<void> => {
    next ??= writing.then(() => {
      next = null;
      const written = writeJson(path, [...all.values()]);
      writing = written.catch(() => undefined);
      return written;
    });
    return next;
  };
  /** What could not be written does not count. */
  const put = async (one: Device): Promise<void> => {
    const before = all.get(one.device);
    all.set(one.device, one);
    try {
      await write();
    } catch (error) {
      if (before === undefined) all.delete(one.device);
      else all.set(one.device, before);
      throw error;
    }
  };
  return {
    all: () => [...all.values()],
    get: (device) => all.get(device) ?? null,
    issue: async (name, issuedAt) => {
      const pair = nkeys.createUser();
      const seed = new TextDecoder().decode(pair.getSeed());
      const said = name.trim().slice(0, 60);
      const device: Device = {
        device: nameFor(said, all.size + 1),
        name: said === '' ? `Phone ${all.size + 1}` : said,
        nkey: pair.getPublicKey(),
        issuedAt,
        outAt: null,
        install: null,
      };
      await put(device);
      return { device, seed };
    },
    putOut: async (device, outAt) => {
      const here = all.get(device);
      if (here === undefined || here.outAt !== null) return false;
      await put({ ...here, outAt });
      return true;
    },
    claim: async (device, install) => {
      const here = all.get(device);
      if (here === undefined) return '';
      if (here.install !== null) return here.install;
      await put({ ...here, install });
      return install;
    },
  };
}
