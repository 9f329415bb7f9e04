// A talk file as its utterances with their times, or one sentence on which line cannot be read and why.

import { isZone, parseIso } from '../../parse/times/index.ts';

export interface TalkUtterance {
  readonly text: string;
  /** epoch ms */
  readonly heardAt: number;
  readonly zone: string;
}

export interface TalkFile {
  readonly kind: 'talk';
  /** epoch ms */
  readonly startedAt: number;
  readonly zone: string;
  readonly utterances: readonly TalkUtterance[];
}

interface Start {
  readonly epochMs: number;
  readonly offset: string;
}

export type TalkFileRead = TalkFile | { readonly kind: 'unreadable'; readonly why: string };

/** The pause between two utterances of which the second has no time of its own. */
const STEP = 4000;
const STAMP = /^\[(\d{1,3}):([0-5]\d):([0-5]\d)\]\s*(.*)$/;
// Brackets with figures in them are meant as a time; "[coughs]" stays among the words.
const MEANT_AS_STAMP = /^\[[\d:.,\s]*\d/;

/** True for text that names its own times, and so is a talk file and no pasted words. */
export const isTalkFile = (text: string): boolean =>
  text.split(/\r\n|\n|\r/).some((line) => /^\s*@(start|zone)\b/.test(line) || STAMP.test(line.trim()));

/** Reads a talk file; `otherwise` (epoch ms, zone) is where and when one begins that does not say it. */
export function readTalkFile(
  text: string,
  otherwise: { readonly startedAt: number; readonly zone: string },
): TalkFileRead {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .map((line, index) => ({ line: line.trim(), number: index + 1 }))
    .filter(({ line }) => line !== '' && !line.startsWith('#'));
  const wrong = (number: number, why: string): TalkFileRead => ({
    kind: 'unreadable',
    why: `line ${number}: ${why}`,
  });
  const heard: { after: number; text: string }[] = [];
  let start: Start | null = null;
  let zone: string | null = null;
  let next = 0;
  for (const { line, number } of lines) {
    if (line.startsWith('@')) {
      const [, name = '', value = ''] = /^@(\S*)\s*(.*)$/.exec(line) ?? [];
      if (heard.length > 0) return wrong(number, `@${name} must stand before the first words`);
      const time: Start | null = name === 'start' && start === null ? parseIso(value) : null;
      if (time !== null) start = time;
      else if (name === 'zone' && zone === null && value !== '' && isZone(value)) zone = value;
      else return wrong(number, `@${name} is not known, stands twice, or has no fit value`);
      continue;
    }
    const [, hours, minutes, seconds, words] = STAMP.exec(line) ?? [];
    if (hours === undefined && MEANT_AS_STAMP.test(line))
      return wrong(number, 'is not a time since the start; write it as [hh:mm:ss]');
    const after =
      hours === undefined ? next : ((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1000;
    if (words !== '') heard.push({ after, text: words ?? line });
    next = after + STEP;
  }
  const startedAt = start?.epochMs ?? otherwise.startedAt;
  const where = zone ?? start?.offset ?? otherwise.zone;
  const utterances = heard.map((one) => ({ text: one.text, heardAt: startedAt + one.after, zone: where }));
  return { kind: 'talk', startedAt, zone: where, utterances };
}
