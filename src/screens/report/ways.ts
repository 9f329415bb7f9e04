// What a report can be passed on by; each is fetched when it is asked for, so that the page itself stays small.

import type { FunctionComponent } from 'preact';

interface Way {
  /** on the button */
  readonly name: string;
  /** it hands over the open record, and closes with it */
  readonly needsRecord: boolean;
  readonly load: () => Promise<FunctionComponent<{ readonly close: () => void }>>;
}

export const WAYS = {
  radio: {
    name: 'Read over the radio',
    needsRecord: true,
    load: () => import('../reader/index.ts').then(({ Reader }) => Reader),
  },
  print: {
    name: 'Print or PDF',
    needsRecord: true,
    load: () => import('../print/index.ts').then(({ Print }) => Print),
  },
  show: {
    name: 'QR or file',
    needsRecord: true,
    load: () => import('../qr/index.ts').then(({ Show }) => Show),
  },
  receive: {
    name: 'Receive a record',
    needsRecord: false,
    load: () => import('../qr/index.ts').then(({ Receive }) => Receive),
  },
} as const satisfies Record<string, Way>;

export type WayName = keyof typeof WAYS;
