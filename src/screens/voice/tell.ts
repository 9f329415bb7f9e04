// Tells something of the page's own: it is said and shown, since a sentence that is only heard is lost on whoever did not hear it.

import { done } from '../desk/index.ts';
import type { Tools } from '../frame/tools.ts';

/** What tells takes of the page's tools. */
export type Telling = Pick<Tools, 'desk' | 'lastTold' | 'speaker'>;

/** `shown` where the screen has the rest of it already. */
export function tell({ desk, lastTold, speaker }: Telling, text: string, shown = text): void {
  desk.notice.value = done(shown);
  lastTold.value = text;
  speaker.speak(text);
}
