// A wire between phones and a server that can be cut and joined again.

import { connect, createServer, type Socket } from 'node:net';

export interface Cutter {
  readonly port: number;
  /** breaks every connection, and lets no new one through until it is joined */
  cut(): void;
  join(): void;
  close(): Promise<void>;
}

export function openCutter(target: number): Promise<Cutter> {
  const open = new Set<Socket>();
  let isCut = false;
  const server = createServer((near) => {
    if (isCut) return void near.destroy();
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
        join: () => {
          isCut = false;
        },
        close: () => {
          cut();
          return new Promise((done) => server.close(() => done()));
        },
      });
    });
  });
}
