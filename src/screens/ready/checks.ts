// Ready for the mountain: each thing that must be so before one goes out, with its real state and how to mend it.

import type { VoiceState } from '../voice/speaking.ts';
import type { WakeState } from './wake.ts';

/** What a button beside a check does to mend it. */
export type Mending = 'install' | 'hearing' | 'persist' | 'microphone';

export interface Check {
  readonly name: string;
  /** null where no button can help */
  readonly by: Mending | null;
  readonly state: 'yes' | 'no' | 'unknown';
  readonly says: string;
  /** what to do; null where it is so */
  readonly mend: string | null;
}

export interface Facts {
  readonly installed: boolean;
  /** the browser offers to install it now */
  readonly installable: boolean;
  /** the page itself is on the device; null where that cannot be told */
  readonly offline: boolean | null;
  readonly model: boolean | null;
  readonly persistent: boolean | null;
  readonly microphone: 'granted' | 'denied' | 'prompt' | null;
  readonly wake: WakeState;
  readonly voice: VoiceState;
  /** null where the browser does not tell */
  readonly battery: { readonly percent: number; readonly charging: boolean } | null;
}

/** Below this, percent, a battery that is not charging is worth mending before one goes out. Our choice, no source. */
const LOW = 80;

const check = (
  name: string,
  so: boolean | null,
  [yes, no]: readonly [string, string],
  mend: string,
  by: Mending | null = null,
): Check => ({
  name,
  by: so === true ? null : by,
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
    facts.installable
      ? 'The browser offers it now.'
      : 'In the browser’s menu choose “Install” or “Add to home screen”.',
    facts.installable ? 'install' : null,
  ),
  check(
    'Recogniser’s model stored',
    facts.model,
    ['Speech can be recognised without a network.', 'The model is not stored.'],
    'Fetch it once while there is a network (8 MB).',
    'hearing',
  ),
  check(
    'Records safe from clearing',
    facts.persistent,
    ['The browser promised not to clear them by itself.', 'The browser may clear them when room is short.'],
    'Install the page, then ask the browser again; export records after each day.',
    'persist',
  ),
  check(
    'Microphone',
    facts.microphone === null ? null : facts.microphone === 'granted',
    ['It may be used.', facts.microphone === 'denied' ? 'It was refused.' : 'It was not asked for yet.'],
    facts.microphone === 'denied'
      ? 'Allow the microphone for this page in the browser’s settings.'
      : 'Let the browser ask you now, and not at the patient’s side.',
    facts.microphone === 'denied' ? null : 'microphone',
  ),
  check(
    'Screen stays awake',
    facts.wake === 'none' || facts.wake === 'refused' ? false : facts.wake === 'on' ? true : null,
    [
      'It can be kept on, and is while a record is open.',
      facts.wake === 'none' ? 'This browser cannot keep it on.' : 'The device refused it.',
    ],
    'Set the screen’s own time to its longest; a low battery may be why.',
  ),
  check(
    'Voice for reading aloud',
    facts.voice === 'local',
    ['A voice is on this device.', 'No voice is on this device; everything is shown instead.'],
    'Add an offline voice in the device’s settings for text to speech.',
  ),
  check(
    'Battery',
    facts.battery === null ? null : facts.battery.charging || facts.battery.percent >= LOW,
    [
      `${facts.battery?.percent ?? 0} %${facts.battery?.charging === true ? ', charging' : ''}.`,
      `${facts.battery?.percent ?? 0} %, not charging.`,
    ],
    'Charge it full.',
  ),
];

export const BATTERY =
  'Cold empties a battery: carry the device against the body, take a power bank, dim the screen (night look), and switch off what is not needed.';
