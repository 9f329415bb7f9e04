// A short answer as JSON that no cache keeps.

import type { ServerResponse } from 'node:http';
import { HEADERS } from './files.ts';

export const answer = (response: ServerResponse, status: number, value: unknown): void => {
  response.writeHead(status, { ...HEADERS, 'content-type': 'application/json', 'cache-control': 'no-store' });
  response.end(JSON.stringify(value));
};
