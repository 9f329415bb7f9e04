// The words shown in a pause are those that are entered if nothing follows. Spoken by flite; sentences are invented.

import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hearingSetup } from '../../src/replay/hearing-setup.ts';
import { loadModule } from '../../src/speech/file/load-module.ts';
import { type Hearing, openHearing, workedOutOf } from '../../src/speech/index.ts';
import { speak, voicesHere } from '../bench/hearing/voices.ts';

const RATE = 16_000;
const BLOCK = 1024;
/** Seconds of stillness after what is said, in which it is entered. */
const AFTER = 1.5;
const SLOW = 120_000;
const speaks = voicesHere(['rms']).length > 0;
const WHY = speaks ? '' : ' (not tested: flite or sox is not installed: apt-get install flite sox)';

describe.skipIf(!speaks)(`the words shown in a pause${WHY}`, () => {
  let hearing: Hearing;
  beforeAll(async () => {
    const { module, models } = await loadModule();
    hearing = openHearing({ module, models, worked: workedOutOf(hearingSetup().worked) });
  }, SLOW);
  afterAll(() => hearing.close());

  // Each may go on after a breath, so that it is entered late.
  it.each(['blood pressure one twenty', 'no swelling or deformity', 'she denies any neck pain'])(
    'are "%s" before it is entered',
    (said) => {
      const sound = Float32Array.from([...speak('rms', said), ...new Float32Array(AFTER * RATE)]);
      const stream = hearing.begin(RATE);
      let shown = '';
      for (let at = 0; at < sound.length; at += BLOCK) {
        const [heard] = stream.push(sound.subarray(at, at + BLOCK));
        if (heard !== undefined) return expect(shown).toBe(heard.utterance.text);
        shown = stream.soFar().join(' ');
      }
      throw new Error(`${said}: nothing was heard`);
    },
    SLOW,
  );
});
