// A frame is what the parser made of one stretch of talk: a statement, a correction of an earlier one, or a command.

import type {
  Care,
  Finding,
  Known,
  Level,
  ProblemChange,
  Side,
  Site,
  Statement,
  StatementKind,
  Topic,
  Vital,
} from '../terms/index.ts';

interface FrameFacts {
  /** the words it came from, as said */
  readonly heard: string;
  /** character offsets in the utterance of the first and past the last of those words */
  readonly span: readonly [start: number, end: number];
}

/** Something stated about the patient (or kept as a note). */
export interface StatementFrame extends FrameFacts {
  readonly frame: 'statement';
  readonly statement: Statement;
  /** how each slot that was not spoken came to be known */
  readonly known: Readonly<Record<string, Exclude<Known, 'spoken'>>>;
  /** what a person must settle, in plain words; empty where nothing is in doubt */
  readonly doubt: readonly string[];
  /** milliseconds since the epoch where a time was spoken ("at fourteen twelve") */
  readonly at?: number;
  /** statements said as one ("no deformity or swelling") share a number; "strike that" takes back the last of them */
  readonly group: number;
}

/** Which earlier entries a correction means. Every slot that is given must fit; the latest group that fits is meant. */
export interface CorrectionTarget {
  readonly kind?: StatementKind;
  readonly site?: Site;
  readonly side?: Side;
  readonly finding?: Finding;
  readonly level?: Level;
  readonly vital?: Vital;
  readonly care?: Care;
  /** of care: what was given, as it was said */
  readonly text?: string;
  readonly topic?: Topic;
}

export type Change =
  | { readonly change: 'strike' }
  | { readonly change: 'side'; readonly side: Side }
  /** `level` where a vertebra or a rib was corrected ("make that T five") */
  | { readonly change: 'site'; readonly site: Site; readonly side?: Side; readonly level?: Level }
  | { readonly change: 'present'; readonly present: boolean }
  | { readonly change: 'finding'; readonly finding: Finding }
  /** a bare number ("make that ninety four"): it takes the place of the target's main number */
  | { readonly change: 'number'; readonly value: number }
  /** the whole statement anew ("correction, pulse ninety four"): it replaces the latest of its kind that fits */
  | { readonly change: 'statement'; readonly statement: Statement };

/** Which reading of a sign is meant: by its number (the first is 1), or one before the last. */
export type Nth = number | 'earlier';

export interface CorrectionFrame extends FrameFacts {
  readonly frame: 'correction';
  /** empty: the last thing said */
  readonly target: CorrectionTarget;
  readonly change: Change;
  /** where it is no matter of the latest reading of a sign */
  readonly nth?: Nth;
  readonly known: Readonly<Record<string, Exclude<Known, 'spoken'>>>;
  readonly doubt: readonly string[];
  readonly at?: number;
}

/** What can be asked of the tool; the grammar's tags are held to these. */
export const COMMANDS = [
  'confirm',
  'restore',
  'whats-left',
  'read-back',
  'say-again',
  'stand-by',
  'go-ahead',
  'help',
  'hush',
  'next-piece',
  'last-piece',
  'patient',
  'lock',
  'look-plain',
  'look-sun',
  'look-night',
  'echo-off',
  'echo-short',
  'echo-full',
  'show-exam',
  'show-entries',
  'show-body',
  'show-signs',
  'show-report',
  'show-records',
  'show-questions',
  'show-timeline',
  'show-settings',
  'show-cautions',
  'show-ready',
  'show-hearing',
  'measure-sound',
  'read-report',
  'hear-again',
  'stop-listening',
  'sounds-on',
  'sounds-off',
  'show-together',
  'show-close',
  'show-export',
  'show-wipe',
  'show-print',
  'show-symbols',
  'show-receive',
  'reminder-on',
  'reminder-off',
  'question-next',
  'question-holds',
  'question-again',
  'misheard',
  'misheard-first',
  'misheard-second',
  'misheard-third',
  'order-radio',
  'order-atmist',
  'order-imist-ambo',
  'order-sbar',
  'order-soap',
  'open-record',
  'new-incident',
  'show-link',
  'show-front',
  'show-back',
  'close-sheet',
] as const;
export type Command = (typeof COMMANDS)[number];

/** Which patient is turned to: by number (the first is 1), or from the one in hand. */
export type PatientMeant = number | 'next' | 'previous' | 'new';

/** Which kept record is to be opened: by its number in the list, by its patient's number, or by words it is known by. */
export type RecordMeant =
  | { readonly place: number }
  | { readonly patient: number }
  | { readonly words: string };

/** Something asked of the tool; it makes no entry but is acted on (or, in the terminal, ignored). */
export interface CommandFrame extends FrameFacts {
  readonly frame: 'command';
  readonly command: Command;
  /** for `patient`: which one */
  readonly patient?: PatientMeant;
  /** for `patient`: the words said after it in the same breath, to be heard in that patient's record */
  readonly rest?: string;
  /** for `open-record`: which one */
  readonly record?: RecordMeant;
}

/** Something done to the problem list; it touches no entry. */
export interface ProblemFrame extends FrameFacts {
  readonly frame: 'problem';
  readonly change: ProblemChange;
}

export type Frame = StatementFrame | CorrectionFrame | CommandFrame | ProblemFrame;

/** What one utterance gave. `context` is handed back with the next one; it is opaque outside parse/. */
export interface Reading<Context> {
  readonly frames: readonly Frame[];
  readonly context: Context;
}
