// The last measurement of the place and the speaker, kept in the browser's small storage so that a reload does not lose it.

import type { Calibrated } from '../../../speech/index.ts';

const KEY = 'fieldsay-calibration';

export interface Measured extends Calibrated {
  /** what the device calls the microphone it was measured with, or nothing */
  readonly microphone: string;
}

const isLoudness = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** The one that is kept, or null; what cannot be one counts as none. */
export function keptMeasurement(storage: Storage | null): Measured | null {
  try {
    const { noise, voice, at, microphone } = JSON.parse(storage?.getItem(KEY) ?? 'null') ?? {};
    const isOne = isLoudness(noise) && (voice === null || isLoudness(voice)) && isLoudness(at);
    return isOne && typeof microphone === 'string' ? { noise, voice, at, microphone } : null;
  } catch {
    return null;
  }
}

/** Keeps it in place of the one before; null keeps none. A browser that refuses keeps none either. */
export function keepMeasurement(storage: Storage | null, measured: Measured | null): void {
  try {
    if (measured === null) storage?.removeItem(KEY);
    else storage?.setItem(KEY, JSON.stringify(measured));
  } catch {
    // It is measured again with five seconds of talk.
  }
}
