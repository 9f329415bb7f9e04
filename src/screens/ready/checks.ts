// Ready for the mountain: each thing that must be so before one goes out, with its real state and how to mend it.

import type { VoiceState } from '../voice/speaking.ts';
import type { WakeState } from './wake.ts';

export interface Check {
  readonly name: string;
  readonly state: 'yes' | 'no' | 'unknown';
  readonly says: string;
  /** what to do; null where it is so */
  readonly mend: string | null;
}

export interface Facts {
  readonly installed: boolean;
  /** the page itself is on the device; null where that cannot be told */
  readonly offline: boolean | null;
  readonly model: boolean | null;
  readonly persistent: boolean | null;
  readonly microphone: 'granted' | 'denied' | 'prompt' | null;
  readonly wake: WakeState;
  readonly voice: VoiceState;
}

const check = (
  name: string,
  so: boolean | null,
  [yes, no]: readonly [string, string],
  mend: string,
): Check => ({
  name,
  state: so === null ? 'unknown' : so ? 'yes' : 'no',
  says: so === null ? 'This browser does not tell.' : so ? yes : no,
  mend: so === true ? null : mend,
});

/** The checks in the order in which one would mend them. */
export const checksOf = (facts: Facts): readonly Check[] => [
  check(
    'Page on this device',
    facts.offline,
    ['It starts without a network.', 'It is not stored yet.'],
    'Open the page once with a network and wait a moment.',
  ),
  check(
    'Installed',
    facts.installed,
    ['It runs as an app of its own.', 'It runs in a browser tab.'],
    'In the browser’s menu choose “Install” or “Add to home screen”.',
  ),
  check(
    'Recogniser’s model stored',
    facts.model,
    ['Speech can be recognised without a network.', 'The model is not stored.'],
    'Turn listening on once while there is a network.',
  ),
  check(
    'Records safe from clearing',
    facts.persistent,
    ['The browser promised not to clear them by itself.', 'The browser may clear them when room is short.'],
    'Install the page; export records after each day.',
  ),
  check(
    'Microphone',
    facts.microphone === null ? null : facts.microphone === 'granted',
    ['It may be used.', facts.microphone === 'denied' ? 'It was refused.' : 'It was not asked for yet.'],
    facts.microphone === 'denied'
      ? 'Allow the microphone for this page in the browser’s settings.'
      : 'Turn listening on once: the browser asks then.',
  ),
  check(
    'Screen stays awake',
    facts.wake === 'none' || facts.wake === 'refused' ? false : facts.wake === 'on' ? true : null,
    [
      'It stays on while a record is open.',
      facts.wake === 'none' ? 'This browser cannot keep it on.' : 'The device refused it.',
    ],
    facts.wake === 'off'
      ? 'It is asked for when a record of a patient is open; look again then.'
      : 'Set the screen’s own time to its longest; low battery may be why.',
  ),
  check(
    'Voice for reading aloud',
    facts.voice === 'local',
    ['A voice is on this device.', 'No voice is on this device; everything is shown instead.'],
    'Add an offline voice in the device’s settings for text to speech.',
  ),
];

export const BATTERY =
  'Battery: charge it full, take a power bank, keep the device warm against the body, and switch off what is not needed.';
