// A talk file or an invented examination is opened as a record of its own; why it cannot be is said in one sentence.

import { readTalk, type Talk, type TalkError, textOfBytes } from '../../record/talk/index.ts';
import { type Desk, done, trouble } from '../desk/index.ts';
import type { Demo } from './demos.ts';
import type { Pace } from './pace.ts';
import type { Player } from './player.ts';

const UTF8 = new TextDecoder('utf-8', { fatal: true });

/** Opens the text of a talk file, all at once, as a record that bears the file's name. */
export function openTalkText(desk: Desk, player: Player, name: string, text: string): void {
  open(desk, player, name, readTalk(text, { startedAt: desk.clock(), zone: desk.zone }));
}

/** Opens a dropped or chosen file. */
export async function openTalkFile(desk: Desk, player: Player, file: File): Promise<void> {
  try {
    const text = textOfBytes(new Uint8Array(await file.arrayBuffer()), UTF8);
    if (text.kind === 'text') openTalkText(desk, player, file.name, text.text);
    else open(desk, player, file.name, text);
  } catch {
    desk.notice.value = trouble(`${file.name} could not be read.`);
  }
}

function open(desk: Desk, player: Player, name: string, read: Talk | TalkError): void {
  if (read.kind === 'error')
    desk.notice.value = trouble(`${name}, line ${read.line}: ${read.why}. Nothing of it was read.`);
  else if (read.utterances.length === 0) desk.notice.value = trouble(`${name} holds no words.`);
  else if (desk.reader.value === null)
    desk.notice.value = trouble('Not ready yet; open the file again in a moment.');
  else {
    player.start(read, { title: name, kind: 'opened', pace: 'all' });
    player.stop();
    desk.notice.value = done(`${name} was opened as a record of its own; others stay under Records.`);
  }
}

/** Plays one of the invented examinations. */
export async function playDemo(desk: Desk, player: Player, demo: Demo, pace: Pace): Promise<void> {
  try {
    const answer = await fetch(`${import.meta.env.BASE_URL}${demo.path}`);
    if (!answer.ok) throw new Error('missing');
    const read = readTalk(await answer.text(), { startedAt: desk.clock(), zone: desk.zone });
    if (read.kind === 'error' || desk.reader.value === null) throw new Error('unreadable');
    player.start(read, { title: demo.title, kind: 'invented', pace });
  } catch {
    desk.notice.value = trouble(
      'The invented examination could not be loaded; try again when the page is online.',
    );
  }
}
