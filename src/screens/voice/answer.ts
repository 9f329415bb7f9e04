// What each command does to the page, and what is said in answer to it; where no voice is on the device it is shown all the same.

import type { RecordEvent } from '../../record/index.ts';
import { done } from '../desk/index.ts';
import type { Panel } from '../frame/panels.ts';
import { sendTo } from '../frame/send-to.ts';
import type { Tools } from '../frame/tools.ts';
import { canMeasure, stopListening } from '../listen/any-ear.ts';
import { lockPage } from '../records/lock.ts';
import { KEPT_RECORDS } from '../records/wanted.ts';
import type { ReportOrder } from '../report/report-orders.ts';
import { entriesOf, lastSaid } from '../talk/became.ts';
import { forgetConfirm, toldOfConfirm } from './confirmed.ts';
import { entryAloud } from './echo.ts';
import { answerQuestion } from './questions.ts';
import { ORDER_CHOSEN, PANEL_SHOWN, PLACE, RECORDS_AT, SHEET_SHOWN, WAY_OPENED } from './shown.ts';
import { tell } from './tell.ts';
import { SAYINGS_ALOUD } from './words.ts';

/** The entries of the last words that gave any, in full. */
function readBack({ desk }: Tools): string {
  const exam = desk.record.peek()?.exam;
  if (exam === undefined) return 'Nothing was said yet.';
  const [latest] = lastSaid(exam.events, exam.state, 12).filter((one) => entriesOf(one).length > 0);
  if (latest === undefined) return 'Nothing was entered yet.';
  return entriesOf(latest)
    .map((entry) => `${entryAloud(entry, 'full')}.`)
    .join(' ');
}

function left({ later }: Tools): string {
  return later.peek()?.worked.left.peek() ?? 'Not ready yet.';
}

/** Plays the sound of the last words that asked the page for nothing; why it cannot is told. */
async function hearAgain(tools: Tools): Promise<void> {
  const { desk, playback, speaker } = tools;
  const record = desk.record.peek();
  if (record === null) return;
  const { events, state } = record.exam;
  const latest = lastSaid(events, state, 12).find(({ outcomes }) =>
    outcomes.every(({ kind }) => kind !== 'command'),
  );
  speaker.hush();
  if (latest === undefined || !(await playback.play(record.facts.id, latest.id)))
    tell(tools, 'The sound of that is not kept.');
}

/** What was confirmed and what waits next is told, lest an entry be taken for confirmed that is not. */
function tellOfConfirm({ desk, echo, standby, speaker, lastTold }: Tools): void {
  const exam = desk.record.peek()?.exam;
  if (exam === undefined) return;
  const { shown, spoken } = toldOfConfirm(exam.events, exam.state, echo.peek());
  if (shown !== null) desk.notice.value = done(shown);
  else forgetConfirm(desk);
  lastTold.value = shown ?? lastTold.peek();
  if (!standby.peek()) speaker.speak(spoken);
}

/** Shows a panel; whatever lies over it goes, so that it is to be seen. */
function showPanel({ sheet, way, changing, panel }: Tools, shown: Panel): void {
  sheet.value = null;
  way.value = null;
  changing.value = null;
  panel.value = shown;
}

/** The order is that of the radio work where that is open, and else of the report panel. */
function choose(tools: Tools, order: ReportOrder): void {
  tools.order.value = order;
  if (tools.way.peek() !== 'radio') showPanel(tools, 'report');
}

/** As its own button does: the sheet that lies over all others says itself what goes with it. */
function closeSheet(): void {
  const open = [...document.querySelectorAll<HTMLDialogElement>('dialog.sheet[open]')];
  open.at(-1)?.dispatchEvent(new Event('cancel'));
}

/** What a command event asks for. */
type Asked = Extract<RecordEvent, { readonly kind: 'command' }>['payload'];

/** Does what was asked for. */
export function answer(tools: Tools, { command, heard, record }: Asked): void {
  const { sheet, look, echo, standby, speaker, lastTold, queue, panel } = tools;
  if (answerQuestion(tools, command, heard)) return;
  const order = ORDER_CHOSEN[command];
  if (order !== undefined) {
    choose(tools, order);
    return;
  }
  const shown = PANEL_SHOWN[command];
  if (shown !== undefined) {
    if (command === 'show-front' || command === 'show-back')
      tools.bodyView.value = command === 'show-front' ? 'front' : 'back';
    showPanel(tools, shown);
    const place = PLACE[command];
    // The panel is drawn first.
    if (place !== undefined) queue.ask({}, () => sendTo(place));
    return;
  }
  const opened = SHEET_SHOWN[command];
  if (opened !== undefined) {
    sheet.value = opened;
    return;
  }
  switch (command) {
    case 'confirm':
      tellOfConfirm(tools);
      break;
    case 'whats-left':
      panel.value = 'body';
      tell(tools, left(tools));
      break;
    case 'read-back':
      tell(tools, readBack(tools));
      break;
    case 'say-again':
      tell(tools, lastTold.peek() ?? readBack(tools));
      break;
    case 'help':
      sheet.value = 'words';
      speaker.speak(SAYINGS_ALOUD);
      break;
    case 'hush':
      speaker.hush();
      break;
    case 'stand-by':
      standby.value = true;
      speaker.hush();
      tools.desk.notice.value = done('Standing by: the page keeps silent. What is said is still recorded.');
      break;
    case 'go-ahead':
      standby.value = false;
      tools.desk.notice.value = done('Going on.');
      break;
    case 'look-plain':
    case 'look-sun':
    case 'look-night':
      look.value = command === 'look-plain' ? 'plain' : command === 'look-sun' ? 'sun' : 'night';
      break;
    case 'echo-off':
      echo.value = 'off';
      speaker.hush();
      break;
    case 'echo-short':
    case 'echo-full':
      echo.value = command === 'echo-short' ? 'short' : 'full';
      break;
    case 'read-report':
    case 'show-print':
    case 'show-symbols':
    case 'show-receive':
      sheet.value = null;
      tools.way.value = WAY_OPENED[command];
      break;
    case 'show-close':
    case 'show-export':
    case 'show-wipe':
      tools.recordsAt.value = RECORDS_AT[command];
      sheet.value = 'records';
      break;
    case 'show-together':
      sheet.value = null;
      panel.value = 'talk';
      // The panel is drawn first; its button shows which they are, and confirms none.
      queue.ask({}, () => document.querySelector<HTMLElement>('.panel-talk .together-way')?.click());
      break;
    case 'reminder-on':
    case 'reminder-off':
      tools.reminder.value = command === 'reminder-on' ? 'on' : 'off';
      break;
    case 'hear-again':
      void hearAgain(tools);
      break;
    case 'open-record':
    case 'new-incident': {
      const meant = command === 'new-incident' ? 'new' : record;
      tools.recordWanted.value =
        meant === undefined ? null : { meant, isListed: document.getElementById(KEPT_RECORDS) !== null };
      sheet.value = 'records';
      break;
    }
    case 'close-sheet':
      closeSheet();
      break;
    case 'measure-sound':
      sheet.value = 'hearing';
      if (canMeasure(tools)) void tools.ear.calibrate();
      break;
    case 'stop-listening':
      void stopListening(tools);
      break;
    case 'sounds-on':
    case 'sounds-off':
      tools.sounds.value = command === 'sounds-on' ? 'on' : 'off';
      break;
    case 'lock':
      void lockPage(tools);
      break;
    default:
      // Restoring and turning to another patient are done by the record itself.
      break;
  }
}
