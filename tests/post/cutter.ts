// A wire between phones and a server that can be cut, or fall silent, and be joined again.

import { connect, createServer, type Socket } from 'node:net';

export interface Cutter {
  readonly port: number;
  /** breaks every connection, and lets no new one through until it is joined */
  cut(): void;
  /** nothing passes any more and nobody is told: connections stay open and dead for good, new ones too until it is joined */
  silence(): void;
  join(): void;
  close(): Promise<void>;
}

export function openCutter(target: number): Promise<Cutter> {
  const open = new Set<Socket>();
  let isCut = false;
  let isSilent = false;
  const server = createServer((near) => {
    if (isCut) return void near.destroy();
    if (isSilent) {
      near.on('error', () => near.destroy());
      near.on('close', () => open.delete(near));
      return void open.add(near.pause());
    }
    const far = connect({ host: '127.0.0.1', port: target });
    for (const [one, other] of [
      [near, far],
      [far, near],
    ] as const) {
      open.add(one);
      one.pipe(other);
      one.on('error', () => other.destroy());
      one.on('close', () => {
        open.delete(one);
        other.destroy();
      });
    }
  });
  const cut = (): void => {
    isCut = true;
    for (const socket of open) socket.destroy();
  };
  return new Promise((resolve) => {
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      resolve({
        port: typeof address === 'object' && address !== null ? address.port : 0,
        cut,
        silence: () => {
          isSilent = true;
          for (const socket of open) socket.unpipe().pause();
        },
        join: () => {
          isCut = false;
          isSilent = false;
        },
        close: () => {
          cut();
          return new Promise((done) => server.close(() => done()));
        },
      });
    });
  });
}
