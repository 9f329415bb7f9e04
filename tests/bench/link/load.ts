// Responders with an event a second each: how long receipts take, what the post and its server need, and that all is there once.

import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { startChild, subjectsIn } from '../../post/child.ts';
import { freePorts } from '../../post/scene.ts';
import { openResponder, percentile, type Responder, talk, untilDone } from './crowd.ts';
import { memoryOf, pidIn, processorOf } from './machine.ts';

/** Runs one load with a board open and gives a row of the table. */
export async function runLoad(count: number, seconds: number): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'fieldsay-load-'));
  const ports = await freePorts();
  const child = await startChild(folder, ports);
  const address = `http://localhost:${ports.client + 5}/`;
  const crowd: Responder[] = [];
  const { pid } = child.process;
  const server = pidIn(join(folder, 'server-1', 'server.pid'));
  const { boardToken } = JSON.parse(readFileSync(join(folder, 'incident.json'), 'utf8'));
  const board = new AbortController();
  try {
    for (let one = 0; one < count; one += 1)
      crowd.push(await openResponder(await child.issue(`Invented ${one}`), address));
    void fetch(`${address}board/feed`, {
      headers: { authorization: `Bearer ${boardToken}` },
      signal: board.signal,
    })
      .then(async ({ body }) => {
        for await (const _ of body ?? []) if (board.signal.aborted) return;
      })
      .catch(() => undefined);
    const used = [processorOf(pid), processorOf(server)];
    const before = memoryOf(pid);
    let most = before;
    const watch = setInterval(() => {
      most = Math.max(most, memoryOf(pid));
    }, 500);
    const from = performance.now();
    await talk(crowd, seconds);
    const rest = await untilDone(crowd, 60_000);
    const span = (performance.now() - from) / 1_000;
    clearInterval(watch);
    const made = crowd.reduce((sum, { events }) => sum + events.length, 0);
    const there = subjectsIn(folder);
    const all = new Set(there);
    const took = crowd.flatMap((one) => one.took);
    const missing = crowd.reduce(
      (sum, { code, events }) =>
        sum +
        events.filter((_, index) => !all.has(`rec.${code.incident}.${code.device}.${index + 1}`)).length,
      0,
    );
    const row = [
      count,
      seconds,
      made,
      missing,
      there.length - all.size,
      `${percentile(took, 0.5).toFixed(0)} ms`,
      `${percentile(took, 0.99).toFixed(0)} ms`,
      `${Math.max(...took).toFixed(0)} ms`,
      rest === null ? 'not all' : `${(rest / 1_000).toFixed(1)} s`,
      `${before} to ${most} MB`,
      `${memoryOf(server)} MB`,
      `${(((processorOf(pid) - (used[0] ?? 0)) / span) * 100).toFixed(0)} %`,
      `${(((processorOf(server) - (used[1] ?? 0)) / span) * 100).toFixed(0)} %`,
      loadavg()[0]?.toFixed(1),
    ];
    return `| ${row.join(' | ')} |`;
  } finally {
    board.abort();
    await Promise.all(crowd.map(({ session }) => session.end()));
    await child.end();
    rmSync(folder, { recursive: true, force: true });
  }
}

export const LOAD_HEAD = `| responders | s | events | lost | twice | receipt p50 | p99 | longest | until all there | post's memory | server's | post's processor | server's | load of the machine |
|---|---|---|---|---|---|---|---|---|---|---|---|---|---|`;
