// Tells boards what changed, once a second, and an open record as it grows; each board is told only what it lacks.

import type { ServerResponse } from 'node:http';
import type { BoardRow, FeedLine } from '../../link/index.ts';
import type { Desk } from '../desk-parts.ts';
import type { Rows } from '../rows.ts';
import { HEADERS } from './files.ts';

/** Between two looks, ms; our choice, no source. */
const TICK = 1_000;

const begin = (response: ServerResponse): void => {
  response.writeHead(200, {
    ...HEADERS,
    'content-type': 'application/x-ndjson',
    'cache-control': 'no-store',
  });
};
const tell = (response: ServerResponse, line: FeedLine): void => {
  response.write(`${JSON.stringify(line)}\n`);
};

/** Looks now and then again and again until the board leaves; a look that fails is tried at the next. */
function every(response: ServerResponse, look: () => Promise<void>): void {
  let looking = false;
  const once = (): void => {
    // A board that takes nothing in is not heaped upon.
    if (looking || response.writableNeedDrain) return;
    looking = true;
    void look()
      .catch(() => undefined)
      .finally(() => {
        looking = false;
      });
  };
  once();
  const timer = setInterval(once, TICK);
  response.on('close', () => clearInterval(timer));
}

/** The whole board at once, then what changes; a line each second also says that the post is there. */
export function feedBoard(
  response: ServerResponse,
  desk: Desk,
  rows: Rows,
  incident: string,
  clock: () => number,
): void {
  const told = new Map<string, BoardRow>();
  begin(response);
  every(response, async () => {
    const all = await rows.read();
    const fresh = all.filter((row) => told.get(row.record) !== row);
    for (const row of fresh) told.set(row.record, row);
    tell(response, {
      line: 'board',
      incident,
      now: clock(),
      order: all.map(({ record }) => record),
      rows: fresh,
      devices: desk.devices().map(({ device, name, out, heardAt, made, here, troubles }) => ({
        device,
        name,
        out,
        heardAt,
        made,
        here,
        troubles,
      })),
      troubles: desk.troubles(),
    });
  });
}

/** A record's events, and each later one as it comes. */
export function feedRecord(response: ServerResponse, desk: Desk, id: string): void {
  let told: readonly string[] = [];
  let version = -1;
  begin(response);
  every(response, async () => {
    const record = desk.records.get(id);
    if (record === null || record.version === version) return;
    const { version: seen } = record;
    const events = await desk.records.events(id);
    const goesOn = told.every((event, index) => events[index]?.id === event);
    tell(response, {
      line: 'record',
      facts: record.facts,
      anew: !goesOn || version === -1,
      events: goesOn ? events.slice(told.length) : events,
    });
    told = events.map((event) => event.id);
    version = seen;
  });
}
