// What every view may need, handed down through one context: nothing is global.

import type { ReadonlySignal, Signal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Pages } from '../../record/store/index.ts';
import type { Derived, Desk } from '../desk/index.ts';
import type { Settled } from '../entries/settled.ts';
import type { Later } from '../later/index.ts';
import type { LinkTool } from '../link/link.ts';
import type { Dictation } from '../listen/dictation.ts';
import type { Ear } from '../listen/ear.ts';
import type { Player } from '../play/player.ts';
import type { Install } from '../ready/install.ts';
import type { WakeState } from '../ready/wake.ts';
import type { IdleMinutes } from '../records/idle.ts';
import type { Persistence } from '../records/storage.ts';
import type { Wanted } from '../records/wanted.ts';
import type { ReportOrder } from '../report/report-orders.ts';
import type { WayName } from '../report/ways.ts';
import type { Playback, SoundChoice, Sounds } from '../sound/index.ts';
import type { Earcons } from '../voice/earcons.ts';
import type { Echo } from '../voice/echo.ts';
import type { Reminder, VitalsPace } from '../voice/reminding.ts';
import type { Speaker } from '../voice/speaking.ts';
import type { Hand } from './hand.ts';
import type { Look } from './look.ts';
import type { Columns, Panel } from './panels.ts';
import type { Queue } from './queue.ts';
import type { Update } from './update.ts';

/** What can be asked of an open reader by voice. */
export interface Reading {
  next(): void;
  back(): void;
  again(): void;
}

export type Sheet = 'cautions' | 'hearing' | 'records' | 'more' | 'words' | 'ready' | 'link' | null;

export interface Tools {
  readonly desk: Desk;
  readonly derived: Derived;
  /** what is fetched after the page is shown; null until it is there */
  readonly later: Signal<Later | null>;
  readonly player: Player;
  /** the incident that this page is in with others; nothing of it is fetched before it is used */
  readonly link: LinkTool;
  /** the bundled recogniser */
  readonly ear: Ear;
  /** the browser's own recognition */
  readonly dictation: Dictation;
  /** reads aloud; whoever listens must be deaf while `speaker.speaking` is true */
  readonly speaker: Speaker;
  /** how much of what was entered is said back */
  readonly echo: Signal<Echo>;
  /** the sound of what was said, and how long it is kept */
  readonly heardSounds: Sounds;
  readonly soundChoice: Signal<SoundChoice>;
  /** plays it; whoever listens must be deaf while `playback.sounding` is true */
  readonly playback: Playback;
  readonly sounds: Signal<'off' | 'on'>;
  /** whether it says aloud that vitals are due, and how often they are */
  readonly reminder: Signal<Reminder>;
  readonly vitalsPace: Signal<VitalsPace>;
  readonly earcons: Earcons;
  /** whether the screen is kept awake */
  readonly wake: ReadonlySignal<WakeState>;
  /** while true the page says nothing of its own accord */
  readonly standby: Signal<boolean>;
  /** what the page told last, for "say again" */
  readonly lastTold: Signal<string | null>;
  /** work that waits until what was said is drawn */
  readonly queue: Queue;
  readonly update: Update;
  readonly install: Install;
  readonly look: Signal<Look>;
  readonly hand: Signal<Hand>;
  /** true while a finger is down: lists stand still */
  readonly hold: ReadonlySignal<boolean>;
  readonly idle: Signal<IdleMinutes>;
  /** the other pages of this browser; null only while the page starts */
  readonly pages: Signal<Pages | null>;
  readonly persistence: Signal<Persistence>;
  readonly columns: Signal<Columns>;
  /** questions between entries that a person has settled */
  readonly settled: Settled;
  readonly panel: Signal<Panel>;
  readonly sheet: Signal<Sheet>;
  /** the report that is being read over the radio, or null */
  readonly reading: Signal<Reading | null>;
  /** the way of handing over that is open: a sheet that stays whatever panels the page has room for */
  readonly way: Signal<WayName | null>;
  /** the part of the records sheet that was asked for by word, until it is in sight */
  readonly recordsAt: Signal<string | null>;
  /** what was asked of the list of records by word, until it is answered there */
  readonly recordWanted: Signal<Wanted | null>;
  /** the order of the report panel */
  readonly order: Signal<ReportOrder>;
  /** the side from which the body panel shows it */
  readonly bodyView: Signal<'front' | 'back'>;
  /** the entry that is being changed */
  readonly changing: Signal<string | null>;
}

const Context = createContext<Tools | null>(null);

export const ToolsProvider = Context.Provider;

/** The page's tools; a view outside the page is a bug. */
export function useTools(): Tools {
  const tools = useContext(Context);
  if (tools === null) throw new Error('a view stands outside the page');
  return tools;
}

/** What was worked out from the record; only the panels that come with it may ask. */
export function useWorked(): Later['worked'] {
  const later = useTools().later.value;
  if (later === null) throw new Error('a view stands before its reckoning');
  return later.worked;
}
