// The measurement of the place and the speaker as it goes on beside the hearing, how long it is kept, and when it is forgotten.

import type { Signal } from '@preact/signals';
import {
  type Calibrated,
  type Calibration,
  calibrationOf,
  gathered,
  stillGood,
} from '../../../speech/index.ts';
import type { SoundLevel } from '../../../speech/microphone/index.ts';
import { keepMeasurement, keptMeasurement } from './kept-calibration.ts';

export interface Calibrating {
  begin(): void;
  /** the microphone was stopped: what is not finished is given up */
  giveUp(): void;
  level(level: SoundLevel): void;
  /** with another microphone than before the measurement is forgotten */
  microphone(name: string): void;
  /** what advice is measured against, or null */
  known(): Calibrated | null;
}

/** `clock` is the wall clock, epoch ms; `storage` keeps the last measurement over a reload. */
export function calibrating(
  shown: Signal<Calibration>,
  clock: () => number,
  storage: Storage | null,
): Calibrating {
  const kept = keptMeasurement(storage);
  let levels: readonly SoundLevel[] | null = null;
  let calibrated: Calibrated | null = stillGood(kept, clock());
  let opened: string | null = calibrated === null ? null : (kept?.microphone ?? null);

  const show = (): void => {
    shown.value = calibrated === null ? { state: 'none' } : { state: 'known', calibrated };
  };
  const become = (next: Calibrated | null): void => {
    calibrated = next;
    keepMeasurement(storage, next === null ? null : { ...next, microphone: opened ?? '' });
    if (levels === null) show();
  };
  if (calibrated !== null) show();

  return {
    begin: () => {
      levels = [];
      shown.value = calibrationOf(levels);
    },
    giveUp: () => {
      if (levels === null) return;
      levels = null;
      show();
    },
    level: (level) => {
      if (levels === null) return;
      levels = gathered(levels, level);
      const now = calibrationOf(levels);
      if (now.state !== 'known') {
        // Whole seconds: the view is told only when one has passed.
        if (JSON.stringify(now) !== JSON.stringify(shown.peek())) shown.value = now;
        return;
      }
      levels = null;
      become(now.calibrated);
    },
    microphone: (name) => {
      const isAnother = opened !== null && opened !== name;
      opened = name;
      if (isAnother && calibrated !== null) become(null);
    },
    known: () => {
      const good = stillGood(calibrated, clock());
      if (good === null && calibrated !== null) become(null);
      return good;
    },
  };
}
