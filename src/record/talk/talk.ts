// A talk file as utterances with their times; what is wrong in it is named with its line. Page and terminal read it alike.

import { isZone, parseIso } from '../../parse/times/index.ts';
import type { HeardUtterance } from '../exam.ts';
import { type TalkError, talkError } from './talk-error.ts';
import { readLine } from './talk-line.ts';

export interface Talk {
  readonly kind: 'talk';
  /** milliseconds since the epoch */
  readonly startedAt: number;
  /** IANA zone or fixed offset */
  readonly zone: string;
  readonly utterances: readonly HeardUtterance[];
}

/** What a file that names no start begins at. */
export interface Default {
  /** milliseconds since the epoch: the time of the run */
  readonly startedAt: number;
  readonly zone: string;
}

/** The contract's pause between two utterances of which the second has no stamp. */
const STEP = 4000;

/** The lines, without the mark that some editors put before the first. */
const linesOf = (text: string): readonly string[] => text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);

/** True for text that names its own times, and so is a talk file and no pasted words. */
export const isTalkFile = (text: string): boolean =>
  linesOf(text).some((line) => {
    const read = readLine(line);
    return (
      read.kind === 'stamped' ||
      (read.kind === 'directive' && (read.name === 'start' || read.name === 'zone'))
    );
  });

interface Header {
  readonly start?: { readonly epochMs: number; readonly offset: string };
  readonly zone?: string;
}

/**
 * Reads a talk file. Directives stand before the first words, since they say when and where all of it was said. A
 * stamp that goes back in time is taken as it stands: what was said is never lost for its time.
 */
export function readTalk(text: string, otherwise: Default): Talk | TalkError {
  let header: Header = {};
  const heard: { readonly after: number; readonly words: string }[] = [];
  let next = 0;
  for (const [index, line] of linesOf(text).entries()) {
    const read = readLine(line);
    switch (read.kind) {
      case 'nothing':
        break;
      case 'wrong':
        return talkError(index + 1, read.why);
      case 'directive': {
        if (heard.length > 0) return talkError(index + 1, `@${read.name} must stand before the first words`);
        const more = readDirective(header, read.name, read.value);
        if (typeof more === 'string') return talkError(index + 1, more);
        header = more;
        break;
      }
      case 'stamped':
      case 'words': {
        const after = read.kind === 'stamped' ? read.after : next;
        if (read.words !== '') heard.push({ after, words: read.words });
        next = after + STEP;
      }
    }
  }
  const startedAt = header.start?.epochMs ?? otherwise.startedAt;
  const zone = header.zone ?? header.start?.offset ?? otherwise.zone;
  const utterances = heard.map(({ after, words }) => ({ text: words, heardAt: startedAt + after, zone }));
  return { kind: 'talk', startedAt, zone, utterances };
}

/** The header with one more directive, or what is wrong with it. */
function readDirective(header: Header, name: string, value: string): Header | string {
  if (name === 'start') {
    if (header.start !== undefined) return '@start stands here a second time';
    const start = parseIso(value);
    if (start !== null) return { ...header, start };
    return '@start needs a date and time with its offset, such as 2026-05-03T14:02:00-06:00';
  }
  if (name === 'zone') {
    if (header.zone !== undefined) return '@zone stands here a second time';
    if (value !== '' && isZone(value)) return { ...header, zone: value };
    return '@zone needs a time zone, such as America/Denver or -06:00';
  }
  return `@${name} is not known; a line may begin with @start or @zone`;
}
