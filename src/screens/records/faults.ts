// What is wrong with a record's log, in sentences: where it breaks, what was still read, and that nothing was removed.

import type { Fault, Verdict } from '../../record/store/index.ts';

const several = (count: number, one: string, many: string): string =>
  count === 1 ? `1 ${one}` : `${count} ${many}`;

function inWords(fault: Fault): string {
  switch (fault.fault) {
    case 'damaged':
      return `event ${fault.place} cannot be read: ${fault.why}`;
    case 'missing':
      return `${several(fault.count, 'event is', 'events are')} missing from number ${fault.place} on`;
    case 'out-of-chain':
      return `event ${fault.place} does not follow the one before it, so something was altered or put in`;
    case 'other-end':
      return `the log does not end with event ${fault.place} as it should`;
    case 'put-back':
      return `this log had come to event ${fault.was} on this device and is now other or shorter: an older copy was put back, or the browser lost what it had written`;
    case 'no-head':
      return 'what says where the log ends cannot be read, so a cut at its end would not show';
  }
}

/** More of them stand in the exported file. */
const SHOWN = 3;

/** `refused`: events of a later version, or none at all, that were read but not understood. */
export function faultsInWords({ faults, lastWhole }: Verdict, refused: number): string {
  const named = faults.slice(0, SHOWN).map(inWords);
  if (faults.length > SHOWN) named.push(`${faults.length - SHOWN} more faults`);
  if (refused > 0)
    named.push(`${several(refused, 'event is', 'events are')} of a kind that this version does not know`);
  const upTo = faults.length === 0 ? '' : ` Whole up to event ${lastWhole}.`;
  return `This record is damaged: ${named.join('; ')}.${upTo} All that can be read is shown; nothing was removed.`;
}
