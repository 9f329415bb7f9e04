// Locks the page: what was said is kept first, then nothing of it is left to be seen or asked for.

import { batch } from '@preact/signals';
import { trouble } from '../desk/index.ts';
import type { Tools } from '../frame/tools.ts';
import { stopListening } from '../listen/any-ear.ts';

/** Gives whether the page is locked now; it is not while something could not be kept, and says so. */
export async function lockPage(tools: Tools): Promise<boolean> {
  const { desk, player, playback, heardSounds, sheet, changing, panel } = tools;
  const { door } = desk;
  if (door.now.value.state !== 'open' || door.now.value.by === 'device') return false;
  player.stop();
  playback.stop();
  // What the ear was in the middle of is still said, and kept with the rest.
  await stopListening(tools);
  await desk.keeper.settled();
  await heardSounds.settled();
  if (desk.keeper.unwritten.value > 0 || desk.waiting.value.length > 0) {
    desk.notice.value = trouble(
      'Not locked: something that was said is not kept yet, and locking would lose it.',
    );
    return false;
  }
  batch(() => {
    desk.record.value = null;
    desk.damage.value = null;
    desk.notice.value = null;
    changing.value = null;
    sheet.value = null;
    panel.value = 'talk';
    door.lock();
  });
  return true;
}
