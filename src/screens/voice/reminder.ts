// Says aloud that vitals are due, where a person wants it: never over somebody's words, the radio or a play, and shown as well.

import { effect } from '@preact/signals';
import { spokenReminder } from '../../clinical/index.ts';
import { done, isUnderWay, lastHeardAt, timeIn } from '../desk/index.ts';
import type { Tools } from '../frame/tools.ts';
import { aloud } from './echo.ts';

/** Nobody is cut off: it waits until this long after the last words, ms. Our choice, no source. */
const QUIET = 6000;

/** What it takes of the page's tools. */
type Needs = Pick<
  Tools,
  'desk' | 'later' | 'player' | 'reading' | 'standby' | 'speaker' | 'reminder' | 'lastTold' | 'playback'
>;

/** Follows the record and the clock; what is said is kept for "say again". Ends when the function given back is called. */
export function remindOfVitals(tools: Needs): () => void {
  const { desk, later, player, reading, standby, speaker, reminder, lastTold, playback } = tools;
  /** of each record, its own time (epoch ms) at which it was last reminded of */
  const spoken = new Map<string, number>();
  return effect(() => {
    // Read first and all of them, so that each wakes it.
    const [record, wall, wants] = [desk.record.value, desk.wall.value, reminder.value];
    const worked = later.value?.worked;
    const busy =
      standby.value ||
      reading.value !== null ||
      desk.aside.value !== null ||
      player.playing.value !== null ||
      playback.sounding.value ||
      speaker.speaking.value;
    if (record === null || worked === undefined || wants === 'off' || busy) return;
    if (record.facts.kind !== 'live' || desk.role.value === 'follows' || !isUnderWay(record, wall)) return;
    const now = timeIn(record, wall);
    if (now - lastHeardAt(record) < QUIET) return;
    const { due, sets } = worked.reckoning.value;
    const startedAt = Date.parse(record.facts.startedAt);
    const text = spokenReminder(due, sets, {
      now,
      startedAt,
      spokenAt: spoken.get(record.facts.id) ?? null,
    });
    if (text === null) return;
    spoken.set(record.facts.id, now);
    desk.notice.value = done(text);
    lastTold.value = text;
    speaker.speak(aloud(text));
  });
}
