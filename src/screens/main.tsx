// Starts the page: it is shown first, and the reader is built when it can already be seen and used.

import { render } from 'preact';
import './styles/index.css';
import { computed, effect, signal, untracked } from '@preact/signals';
import { createIdbShelf, createWitness, type Role } from '../record/store/index.ts';
import { createDesk, derive, say, sayWaiting, trouble } from './desk/index.ts';
import { createSettled } from './entries/settled.ts';
import { createColumns } from './frame/columns.ts';
import { takeDroppedFiles } from './frame/drop.ts';
import { createHand } from './frame/hand.ts';
import { keepFocus } from './frame/keep-focus.ts';
import { keptChoice } from './frame/kept-choice.ts';
import { createLook } from './frame/look.ts';
import { SOUNDS } from './frame/More.tsx';
import { obeyCommands } from './frame/obey.ts';
import type { Panel } from './frame/panels.ts';
import { queueOf } from './frame/queue.ts';
import { settingsStorage } from './frame/storage.ts';
import type { Sheet } from './frame/tools.ts';
import { type Tools, ToolsProvider } from './frame/tools.ts';
import { createUpdate } from './frame/update.ts';
import { createLink, startLink } from './link/link.ts';
import { bestOf } from './listen/alternatives.ts';
import { createDictation } from './listen/dictation.ts';
import { createEar } from './listen/ear.ts';
import { logGap, openHeard, sayHeard } from './listen/into-record.ts';
import { createOwnVoice } from './listen/own-voice.ts';
import { Page } from './Page.tsx';
import { createPlayer } from './play/player.ts';
import { keepOffer } from './ready/install.ts';
import { keepAwake } from './ready/wake.ts';
import { createDoor } from './records/door.ts';
import { joinOthers } from './records/follow.ts';
import { Gate } from './records/Gate.tsx';
import { createIdle, lockWhenIdle } from './records/idle.ts';
import { createKeeper } from './records/keeper.ts';
import { openLast } from './records/restore.ts';
import { askToPersist, bytesLeft } from './records/storage.ts';
import { followTurns } from './records/turn.ts';
import { createPlayback, createSounds, SOUND_CHOICES } from './sound/index.ts';
import { createHold } from './steady/hold.ts';
import { createEarcons } from './voice/earcons.ts';
import { ECHOES } from './voice/echo.ts';
import { PACES, REMINDERS } from './voice/reminding.ts';
import { speakerIn } from './voice/speaking.ts';

const CAUTIONS_READ = 'fieldsay-cautions-read';
/** Times shown are in minutes; the clock moves on often enough for them. */
const TICK = 15_000;

const storage = settingsStorage();
const clock = (): number => Date.now();
const newId = (): string => crypto.randomUUID();

const shelf = createIdbShelf();
const door = createDoor(shelf, clock);
const role = signal<Role>('asking');
const keeper = createKeeper(
  shelf,
  door,
  () => role.peek() !== 'follows',
  () => heardSounds.makeRoom(),
  createWitness(storage),
);
const soundChoice = keptChoice(storage, 'fieldsay-sound-kept', SOUND_CHOICES, 'until-closed');
const heardSounds = createSounds({ shelf, door, keeper, choice: soundChoice, room: bytesLeft });
const playback = createPlayback(heardSounds, () => new AudioContext());
const desk = createDesk({
  role,
  shelf,
  door,
  keeper,
  keepSound: heardSounds.keep,
  device: `page-${newId().slice(0, 8)}`,
  zone: () => Intl.DateTimeFormat().resolvedOptions().timeZone,
  clock,
  newId,
});

const own = createOwnVoice(speakerIn(window), clock, playback.sounding);

const tools: Tools = {
  desk,
  derived: derive(desk),
  later: signal(null),
  player: createPlayer(desk),
  link: createLink(storage, window),
  ear: createEar(async (parts) => (await import('./listen/engine/index.ts')).createEngine(parts), {
    heard: (heard) => {
      if (!own.isOwn(heard.utterance.text, heard.from)) sayHeard(desk, heard);
    },
    gap: (gap) => logGap(desk, gap),
    recorded: (name, heard) => openHeard(desk, name, heard),
    storage,
  }),
  dictation: createDictation(window, {
    likely: async () => (await import('./listen/engine/likely.ts')).likely(),
    gap: (gap) => logGap(desk, gap),
    heard: ({ from, ...heard }) => {
      if (own.isOwn(heard.text, from)) return;
      const { text, ...told } = bestOf(desk, heard);
      say(desk, [text], { ...told, engine: 'browser', at: from });
    },
  }),
  speaker: own.speaker,
  heardSounds,
  soundChoice,
  playback,
  echo: keptChoice(storage, 'fieldsay-echo', ECHOES, 'off'),
  reminder: keptChoice(storage, 'fieldsay-reminder', REMINDERS, 'off'),
  vitalsPace: keptChoice(storage, 'fieldsay-vitals-pace', PACES, 'usual'),
  sounds: keptChoice(storage, 'fieldsay-sounds', SOUNDS, 'off'),
  earcons: createEarcons('AudioContext' in window ? () => new AudioContext() : null),
  standby: signal(false),
  // The screen of a play or of a file that was read may go dark.
  wake: keepAwake(
    computed(() => desk.record.value?.facts.kind === 'live'),
    document,
  ),
  lastTold: signal<string | null>(null),
  queue: queueOf(window),
  update: createUpdate(),
  install: keepOffer(window),
  look: createLook(storage, document.documentElement),
  hand: createHand(storage, document.documentElement),
  hold: createHold(window),
  columns: createColumns(),
  idle: createIdle(storage),
  persistence: askToPersist(),
  pages: signal(null),
  settled: createSettled(),
  panel: signal<Panel>('talk'),
  sheet: signal<Sheet>(storage?.getItem(CAUTIONS_READ) === 'yes' ? null : 'cautions'),
  reading: signal(null),
  way: signal(null),
  recordsAt: signal<string | null>(null),
  recordWanted: signal(null),
  order: signal('radio'),
  bodyView: signal('front'),
  changing: signal<string | null>(null),
};

tools.sheet.subscribe((sheet) => {
  if (sheet === null) storage?.setItem(CAUTIONS_READ, 'yes');
});
own.guard([tools.ear, tools.dictation]);
obeyCommands(tools);
followTurns(tools);
tools.pages.value = joinOthers(tools);
lockWhenIdle(tools, tools.idle, window);
// What cannot be seen is written on the root, for whoever watches the page from outside.
effect(() => {
  const { fault, unwritten } = desk.keeper;
  document.documentElement.dataset.kept = unwritten.value === 0 && fault.value === null ? 'all' : 'not-all';
});
effect(() => {
  void heardSounds.look(desk.record.value?.facts.id ?? null).catch(() => undefined);
});
takeDroppedFiles(window, tools);
keepFocus(document);
setInterval(() => {
  desk.wall.value = clock();
}, TICK);

const root = document.getElementById('page');
if (root !== null)
  render(
    <ToolsProvider value={tools}>
      <Gate>
        <Page />
      </Gate>
    </ToolsProvider>,
    root,
  );

async function prepare(): Promise<void> {
  const { makeReady, remindOfVitals } = await import('./later/index.ts');
  const { reader, fault, ...later } = makeReady(desk, tools.derived, tools.vitalsPace);
  tools.later.value = later;
  // Asked for now, so that the first words do not wait for it.
  void desk.zone;
  if (fault !== null) desk.notice.value = trouble(fault);
  await door.start();
  await openLast(desk, reader);
  desk.reader.value = reader;
  effect(() => {
    if (desk.role.value === 'writes') untracked(() => sayWaiting(desk));
  });
  document.documentElement.dataset.reader = 'there';
  remindOfVitals(tools);
  startLink(tools);
  await tools.ear.look();
}

// Two frames: the first is being painted when the second is asked for.
requestAnimationFrame(() =>
  requestAnimationFrame(() => {
    prepare()
      .catch(() => {
        desk.notice.value = trouble(
          'The reader of talk could not be loaded; reload the page. Lines typed so far wait.',
        );
      })
      // Also where that failed: a new version may mend it.
      .finally(tools.update.start);
  }),
);
