// What a process takes of this machine, as Linux tells it.

import { readFileSync } from 'node:fs';

/** Resident memory in MB; 0 where it cannot be read. */
export function memoryOf(pid: number | undefined): number {
  try {
    const [, kilobytes = '0'] = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? [];
    return Math.round(Number(kilobytes) / 1024);
  } catch {
    return 0;
  }
}

/** Seconds of processor used so far. */
export function processorOf(pid: number | undefined): number {
  try {
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
    return (Number(fields[11]) + Number(fields[12])) / 100;
  } catch {
    return 0;
  }
}

export const pidIn = (path: string): number | undefined => {
  try {
    return Number(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
};
