// Promises the line of a page: WebSocket to the page's own address, which the post carries on to the server.

import { wsconnect } from '@nats-io/nats-core';
import { type Credential, createLine } from '../nats/line.ts';
import type { Line } from '../port.ts';

/** `address` is where the page came from; the link has its own path there. */
export function dialPost(address: string, credential: Credential): Line {
  const url = new URL('link', address);
  url.protocol = url.protocol === 'http:' ? 'ws:' : 'wss:';
  return createLine(
    (options) => wsconnect({ ...options, servers: url.href, ignoreClusterUpdates: true }),
    credential,
  );
}
