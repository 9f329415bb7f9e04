// A talk file or an invented examination is opened as a record of its own; why it cannot be is said in one sentence.

import { type Desk, done, trouble } from '../desk/index.ts';
import { readTalkFile } from '../talk/talk-file.ts';
import type { Demo } from './demos.ts';
import type { Pace } from './pace.ts';
import type { Player } from './player.ts';

/** Opens the text of a talk file, all at once, as a record that bears the file's name. */
export function openTalkText(desk: Desk, player: Player, name: string, text: string): void {
  const read = readTalkFile(text, { startedAt: desk.clock(), zone: desk.zone });
  if (read.kind === 'unreadable')
    desk.notice.value = trouble(`${name}, ${read.why}. Nothing of it was read.`);
  else if (read.utterances.length === 0) desk.notice.value = trouble(`${name} holds no words.`);
  else if (desk.reader.value === null)
    desk.notice.value = trouble('Not ready yet; open the file again in a moment.');
  else {
    player.start(read, { title: name, kind: 'opened', pace: 'all' });
    player.stop();
    desk.notice.value = done(`${name} was opened as a record of its own; others stay under Records.`);
  }
}

/** Opens a dropped or chosen file. */
export async function openTalkFile(desk: Desk, player: Player, file: File): Promise<void> {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    openTalkText(desk, player, file.name, text);
  } catch {
    desk.notice.value = trouble(`${file.name} is not UTF-8 text, or could not be read.`);
  }
}

/** Plays one of the invented examinations. */
export async function playDemo(desk: Desk, player: Player, demo: Demo, pace: Pace): Promise<void> {
  try {
    const answer = await fetch(`${import.meta.env.BASE_URL}${demo.path}`);
    if (!answer.ok) throw new Error('missing');
    const read = readTalkFile(await answer.text(), { startedAt: desk.clock(), zone: desk.zone });
    if (read.kind === 'unreadable' || desk.reader.value === null) throw new Error('unreadable');
    player.start(read, { title: demo.title, kind: 'invented', pace });
  } catch {
    desk.notice.value = trouble(
      'The invented examination could not be loaded; try again when the page is online.',
    );
  }
}
