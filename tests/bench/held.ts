// How much of the heap a thing takes while it is held: what an engine has not collected yet belongs to nothing.

import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** Collects all waste at once, though the process was not begun with leave to ask for that. */
function collector(): () => void {
  setFlagsFromString('--expose-gc');
  return runInNewContext('gc') as () => void;
}

const collect = collector();

function heapMb(): number {
  collect();
  return process.memoryUsage().heapUsed / 1e6;
}

/** Megabytes of heap that are still taken once this was made, beside those before. */
export async function heldMb(make: () => Promise<unknown>): Promise<number> {
  const before = heapMb();
  const held = await make();
  const after = heapMb();
  // Named once more, lest it be let go before the heap was measured.
  return held === undefined ? 0 : after - before;
}
