// Promises a talk file as utterances with their times, or the line that cannot be read and why.

export { type Default, isTalkFile, readTalk, type Talk } from './talk.ts';
export { type TalkError, talkError } from './talk-error.ts';
export { textOfBytes } from './text-of-bytes.ts';
