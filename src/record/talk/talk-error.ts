// Why a talk file could not be read, and on which of its lines.

export interface TalkError {
  readonly kind: 'error';
  /** counts from 1 */
  readonly line: number;
  readonly why: string;
}

export const talkError = (line: number, why: string): TalkError => ({ kind: 'error', line, why });
