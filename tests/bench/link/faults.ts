// Faults under load, with counts: what was told to be at the post is on its disk at every moment, and all is there once in the end.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type PostChild, startChild, subjectsIn } from '../../post/child.ts';
import { openCutter } from '../../post/cutter.ts';
import { freePorts } from '../../post/scene.ts';
import { openResponder, type Responder, talk, untilDone } from './crowd.ts';
import { pidIn } from './machine.ts';

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

interface Stage {
  readonly folder: string;
  readonly child: () => PostChild;
  readonly restart: () => Promise<void>;
  readonly cutter: Awaited<ReturnType<typeof openCutter>>;
}

/** What did not arrive, and how its phone sees it: for whoever looks for the cause. */
function sayLeft(crowd: readonly Responder[]): void {
  for (const { code, session, events } of crowd) {
    const { line, tally, problem, troubles, word } = session.state();
    if (tally.atPost < events.length)
      console.error(
        `${code.device}: ${JSON.stringify({ line, tally, problem, troubles, upTo: word?.upTo, says: word?.troubles })}`,
      );
  }
}

/** Runs one fault and gives its row of the table. */
async function runFault(
  name: string,
  count: number,
  seconds: number,
  more: readonly string[],
  fault: (stage: Stage) => Promise<void>,
): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'fieldsay-faults-'));
  const ports = await freePorts();
  let child = await startChild(folder, ports, more);
  const cutter = await openCutter(ports.client + 5);
  const crowd: Responder[] = [];
  try {
    for (let one = 0; one < count; one += 1)
      crowd.push(
        await openResponder(await child.issue(`Invented ${one}`), `http://localhost:${cutter.port}/`),
      );
    let early = 0;
    const stage: Stage = {
      folder,
      child: () => child,
      restart: async () => {
        await child.kill();
        const told = crowd.map(({ session }) => session.state().tally.atPost);
        const there = subjectsIn(folder);
        for (const [index, { code }] of crowd.entries())
          early += Math.max(
            0,
            (told[index] ?? 0) - there.filter((one) => one.includes(`.${code.device}.`)).length,
          );
        await wait(3_000);
        child = await startChild(folder, ports, more);
      },
      cutter,
    };
    const talking = talk(crowd, seconds);
    await wait(5_000);
    await fault(stage);
    await talking;
    const rest = await untilDone(crowd, 120_000);
    if (rest === null) sayLeft(crowd);
    const there = subjectsIn(folder);
    const made = sum(crowd.map(({ events }) => events.length));
    const all = new Set(there);
    const lost = sum(
      crowd.map(
        ({ code, events }) =>
          events.filter((_, index) => !all.has(`rec.${code.incident}.${code.device}.${index + 1}`)).length,
      ),
    );
    const row = [
      name,
      count,
      seconds,
      made,
      lost,
      there.length - all.size,
      early,
      rest === null ? 'NOT within 120 s' : `${(rest / 1_000).toFixed(1)} s`,
    ];
    return `| ${row.join(' | ')} |`;
  } finally {
    await Promise.all(crowd.map(({ session }) => session.end()));
    await cutter.close();
    await child.end();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

export const FAULTS_HEAD = `| fault | responders | s | events | lost | twice | told before it was written | after the last word, all there in |
|---|---|---|---|---|---|---|---|`;

const killIn = (file: string): void => {
  const pid = pidIn(file);
  if (pid !== undefined) process.kill(pid, 'SIGKILL');
};

interface Fault {
  readonly name: string;
  readonly seconds: number;
  readonly more?: readonly string[];
  readonly run: (stage: Stage) => Promise<void>;
}

/** By the word that chooses them on the command line. */
const FAULTS: Readonly<Record<string, Fault>> = {
  server: {
    name: 'the server is killed (SIGKILL), three times',
    seconds: 25,
    run: async ({ folder }) => {
      for (let again = 0; again < 3; again += 1) {
        killIn(join(folder, 'server-1', 'server.pid'));
        await wait(6_000);
      }
    },
  },
  post: {
    name: 'the post is killed (SIGKILL), twice, and begun again',
    seconds: 40,
    run: async ({ restart }) => {
      await restart();
      await wait(4_000);
      await restart();
    },
  },
  still: {
    name: 'the post stands still (SIGSTOP) for 12 s after a cut, so that no dial is answered',
    seconds: 30,
    run: async ({ child, cutter }) => {
      child().process.kill('SIGSTOP');
      cutter.cut();
      cutter.join();
      await wait(12_000);
      child().process.kill('SIGCONT');
    },
  },
  cut: {
    name: 'all links cut for a minute',
    seconds: 80,
    run: async ({ cutter }) => {
      cutter.cut();
      await wait(60_000);
      cutter.join();
    },
  },
  silence: {
    name: 'all links silent for a minute (nothing passes, nobody is told)',
    seconds: 80,
    run: async ({ cutter }) => {
      cutter.silence();
      await wait(60_000);
      cutter.join();
    },
  },
  cluster: {
    name: 'one of three servers is killed (SIGKILL), twice',
    seconds: 40,
    more: ['--cluster'],
    run: async ({ folder }) => {
      killIn(join(folder, 'server-1', 'server.pid'));
      await wait(12_000);
      killIn(join(folder, 'server-2', 'server.pid'));
    },
  },
};
export const FAULT_NAMES: readonly string[] = Object.keys(FAULTS);

/** Runs the named faults, each so many times, and gives the rows of the table as they come. */
export async function runFaults(
  names: readonly string[],
  count: number,
  times: number,
  say: (row: string) => void,
): Promise<void> {
  for (const name of names)
    for (let time = 0; time < times; time += 1) {
      const fault = FAULTS[name];
      if (fault === undefined) throw new Error(`there is no fault ${name}: ${FAULT_NAMES.join(', ')}`);
      say(await runFault(fault.name, count, fault.seconds, fault.more ?? [], fault.run));
    }
}
