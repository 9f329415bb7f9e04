// The measurement of the place and the speaker as it goes on beside the hearing, and when it is forgotten.

import type { Signal } from '@preact/signals';
import {
  type Calibrated,
  type Calibration,
  calibrationOf,
  gathered,
  stillGood,
} from '../../../speech/index.ts';
import type { SoundLevel } from '../../../speech/microphone/index.ts';

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

/** `clock` is the wall clock, epoch ms. */
export function calibrating(shown: Signal<Calibration>, clock: () => number): Calibrating {
  let levels: readonly SoundLevel[] | null = null;
  let calibrated: Calibrated | null = null;
  let opened: string | null = null;

  const show = (): void => {
    shown.value = calibrated === null ? { state: 'none' } : { state: 'known', calibrated };
  };

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
      if (now.state === 'known') calibrated = now.calibrated;
      show();
    },
    microphone: (name) => {
      if (opened !== null && opened !== name && calibrated !== null) {
        calibrated = null;
        if (levels === null) show();
      }
      opened = name;
    },
    known: () => {
      const good = stillGood(calibrated, clock());
      if (good === null && calibrated !== null) {
        calibrated = null;
        if (levels === null) show();
      }
      return good;
    },
  };
}
