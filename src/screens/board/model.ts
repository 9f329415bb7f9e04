// What a board knows: the rows as the post told them last, how old that is, and which record is open.

import { type Signal, signal } from '@preact/signals';
import type { BoardDevice, BoardRow } from '../../link/index.ts';
import { type FeedState, readFeed } from './feed.ts';

export interface BoardModel {
  readonly token: string;
  /** true where phones may be let in and put out from here */
  readonly isCrew: boolean;
  readonly state: Signal<FeedState>;
  readonly incident: Signal<string>;
  /** worst first, as the post ordered them */
  readonly rows: Signal<readonly BoardRow[]>;
  readonly devices: Signal<readonly BoardDevice[]>;
  readonly troubles: Signal<readonly string[]>;
  /** the post's clock when it last said something, and this device's then; epoch ms */
  readonly toldAt: Signal<{ readonly post: number; readonly here: number } | null>;
  readonly open: Signal<string | null>;
  /** this device's clock, moving */
  readonly now: Signal<number>;
}

const TOKEN = /^#(board|crew)=([\w-]{20,})$/;

/** The board of the address it was opened by; null where that names no token. */
export function createBoard(hash: string): BoardModel | null {
  const [, way, token] = TOKEN.exec(hash) ?? [];
  if (token === undefined) return null;
  const model: BoardModel = {
    token,
    isCrew: way === 'crew',
    state: signal<FeedState>('connecting'),
    incident: signal(''),
    rows: signal([]),
    devices: signal([]),
    troubles: signal([]),
    toldAt: signal(null),
    open: signal(null),
    now: signal(Date.now()),
  };
  let known = new Map<string, BoardRow>();
  readFeed(
    'board/feed',
    token,
    (line) => {
      if (line.line !== 'board') return;
      for (const row of line.rows) known.set(row.record, row);
      model.incident.value = line.incident;
      model.rows.value = line.order.flatMap((id) => known.get(id) ?? []);
      model.devices.value = line.devices;
      model.troubles.value = line.troubles;
      model.toldAt.value = { post: line.now, here: Date.now() };
    },
    (state) => {
      // Each time the post tells everything from the start.
      if (state === 'there') known = new Map();
      model.state.value = state;
    },
    true,
  );
  setInterval(() => {
    model.now.value = Date.now();
  }, 1_000);
  return model;
}

/** The post's clock now, as far as it can be known here. */
export const postNow = ({ toldAt, now }: BoardModel): number => {
  const told = toldAt.value;
  return told === null ? now.value : told.post + Math.max(0, now.value - told.here);
};

/** `40 s ago`, `3 min ago` */
export function ago(at: number | null, now: number): string {
  if (at === null || at === 0) return 'not yet';
  const seconds = Math.max(0, Math.round((now - at) / 1_000));
  return seconds < 90 ? `${seconds} s ago` : `${Math.round(seconds / 60)} min ago`;
}
