// The few things that the post asks of a disk, so that a test can hand in one that is full.

import { type FileHandle, open } from 'node:fs/promises';
import { dirname } from 'node:path';

export interface OpenFile {
  readonly size: number;
  /** all of it at this place; rejects with the system's error */
  write(bytes: Uint8Array, at: number): Promise<void>;
  /** resolves when what was written is on the disk itself */
  sync(): Promise<void>;
  cut(size: number): Promise<void>;
  read(at: number, length: number): Promise<Buffer>;
  close(): Promise<void>;
}

export type OpenDisk = (path: string) => Promise<OpenFile>;

/** A file to read and to add to; made where there is none, and then its folder is synced too. */
export const openOnDisk: OpenDisk = async (path) => {
  const file: FileHandle = await open(path, 'a+').then(async (made) => {
    await made.close();
    return open(path, 'r+');
  });
  const folder = await open(dirname(path), 'r');
  await folder.sync();
  await folder.close();
  return {
    size: (await file.stat()).size,
    write: async (bytes, at) => {
      let done = 0;
      while (done < bytes.length)
        done += (await file.write(bytes, done, bytes.length - done, at + done)).bytesWritten;
    },
    sync: () => file.datasync(),
    cut: (size) => file.truncate(size),
    read: async (at, length) => {
      const bytes = Buffer.alloc(length);
      const { bytesRead } = await file.read(bytes, 0, length, at);
      return bytes.subarray(0, bytesRead);
    },
    close: () => file.close(),
  };
};
