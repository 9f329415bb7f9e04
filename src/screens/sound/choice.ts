// How long the sound of what is said is kept, in words for the screen.

import { BYTES_A_SECOND } from '../../speech/compressed/index.ts';

export const SOUND_CHOICES = ['until-closed', 'kept', 'off'] as const;
export type SoundChoice = (typeof SOUND_CHOICES)[number];

export const SOUND_CHOICE_WORDS: Readonly<Record<SoundChoice, string>> = {
  'until-closed': 'until the record is closed',
  kept: 'until the record is wiped',
  off: 'not at all',
};

/** `8.1 kB a second, 29 MB for an hour of speech`. */
export const SOUND_SIZE = `${(BYTES_A_SECOND / 1000).toFixed(1)} kB a second, ${Math.round(
  (BYTES_A_SECOND * 3600) / 1e6,
)} MB for an hour of speech`;
