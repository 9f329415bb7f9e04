// Five seconds of listening that tell what this place and this speaker sound like, so that advice is measured against them.

import { decibels, LEAST_ABOVE, QUIET, quantile, STILL } from './level.ts';
import type { SoundLevel } from './microphone/loudness.ts';

export interface Calibrated {
  /** what is heard while nobody speaks, decibels under full scale */
  readonly noise: number;
  /** the speaker, decibels under full scale; null where nobody stood out from the noise */
  readonly voice: number | null;
  /** when it was measured, epoch ms */
  readonly at: number;
}

/** Seconds for the place alone, and then for the speaker. */
const PLACE = 2;
const SPEAKER = 3;
export const SECONDS = PLACE + SPEAKER;
/** Sound that is missing for longer than this, ms, makes it begin anew. */
const HOLE = 1000;
/** Under this many decibels above the noise it cannot be told whether somebody spoke. */
const STANDS_OUT = 6;
/** So many above what is needed is called good; with fewer a step away is already too far (half the level: 6 dB). */
const TO_SPARE = 6;
/** More decibels than this make no difference. */
const MUCH = 40;
/** A measurement older than this, ms, is of another day. */
const KEPT = 12 * 3_600_000;

export type Calibration =
  | { readonly state: 'none' }
  /** `still`: the place is measured; `speak`: the speaker is. `left`: whole seconds of the five */
  | { readonly state: 'still' | 'speak'; readonly left: number }
  | { readonly state: 'known'; readonly calibrated: Calibrated };

/** The sound of the measurement with the newest; what came before a hole is left out. */
export const gathered = (levels: readonly SoundLevel[], newest: SoundLevel): readonly SoundLevel[] => {
  const last = levels.at(-1);
  return last !== undefined && Math.abs(newest.from - last.to) > HOLE ? [newest] : [...levels, newest];
};

/** How far the measurement has come with this sound. */
export function calibrationOf(levels: readonly SoundLevel[]): Calibration {
  const [first, last] = [levels[0], levels.at(-1)];
  if (first === undefined || last === undefined) return { state: 'still', left: SECONDS };
  const seconds = (last.to - first.from) / 1000;
  if (seconds < SECONDS)
    return { state: seconds < PLACE ? 'still' : 'speak', left: Math.ceil(SECONDS - seconds) };
  const loudness = (some: readonly SoundLevel[]) => some.map(({ rms }) => decibels(rms));
  const isPlace = ({ to }: SoundLevel) => to - first.from <= PLACE * 1000;
  const place = loudness(levels.filter(isPlace));
  const speaker = loudness(levels.filter((level) => !isPlace(level)));
  // Whoever speaks too soon still pauses between words: the lower of the two is the noise.
  const noise = Math.min(quantile(place, 0.5), quantile(speaker, 0.1));
  const voice = quantile(speaker, 0.9);
  return {
    state: 'known',
    calibrated: { noise, voice: voice - noise < STANDS_OUT ? null : voice, at: last.to },
  };
}

/** The measurement, or null where it is of another day or lies in the future of a clock that was set back. */
export const stillGood = (calibrated: Calibrated | null, now: number): Calibrated | null =>
  calibrated !== null && now >= calibrated.at && now - calibrated.at < KEPT ? calibrated : null;

/** A place and a voice change; from here on, ms, a new measurement is worth its five seconds. Our choice, no source. */
const OLD = 3_600_000;

/** How old it is in plain words: `Measured 12 minutes ago.` */
export function ageWords({ at }: Calibrated, now: number): string {
  const minutes = Math.max(0, Math.floor((now - at) / 60_000));
  const hours = Math.floor(minutes / 60);
  const [many, unit] = hours > 0 ? [hours, 'hour'] : [minutes, 'minute'];
  const age = minutes === 0 ? 'just now' : `${many} ${unit}${many === 1 ? '' : 's'} ago`;
  return `Measured ${age}.${now - at < OLD ? '' : ' The place or the wind may be another by now.'}`;
}

/** What it found, in plain words. */
export function calibrationWords({ noise, voice }: Calibrated): string {
  const isStill = noise <= STILL;
  if (voice === null)
    return isStill
      ? 'It is still here. No voice was heard: speak as you will speak, and measure again.'
      : 'It is noisy here, and no voice stood out: cover the microphone from the wind, come nearer, and measure again.';
  const above = Math.round(voice - noise);
  if (!isStill && above < LEAST_ABOVE)
    return `Too noisy: your voice is only ${above} decibels louder than the noise, and words will be lost. Cover the microphone from the wind or come nearer, and measure again.`;
  if (voice < QUIET && above < LEAST_ABOVE + TO_SPARE)
    return 'Your voice is faint at this microphone: come nearer, and measure again.';
  // Where a device gives plain silence between words, the figure is none of the place.
  const much = above > MUCH ? `more than ${MUCH}` : String(above);
  const spare = above < LEAST_ABOVE + TO_SPARE;
  return `Your voice is ${much} decibels louder than the noise here: ${spare ? 'enough, with little to spare.' : 'good.'}`;
}
