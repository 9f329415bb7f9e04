// A reader for the record's tests: it gives the frames written down for each text, and counts what it has read.

import type { CorrectionFrame, Frame, StatementFrame } from '../../src/parse/frame.ts';
import { beginExam, type Exam, hearUtterance, type ReadsTalk } from '../../src/record/index.ts';
import type { Statement } from '../../src/terms/index.ts';

/** 2026-05-03T14:02:00-06:00; the examination and everything said in it is invented. */
export const START = Date.UTC(2026, 4, 3, 20, 2, 0);
export const ZONE = '-06:00';

type Draft =
  | (Partial<StatementFrame> & { readonly statement: Statement })
  | (Partial<CorrectionFrame> & Pick<CorrectionFrame, 'change'>)
  | { readonly command: 'confirm' | 'help' };

/** Frames of one utterance; statements share group 0 unless told otherwise. */
export type Script = Readonly<Record<string, readonly Draft[]>>;

export function fakeReader(script: Script): ReadsTalk<number> {
  return {
    begin: () => 0,
    read({ text }, context) {
      const drafts = script[text];
      if (drafts === undefined) throw new Error(`no frames are written down for ${JSON.stringify(text)}`);
      return { frames: drafts.map((draft) => frameOf(draft, text)), context: context + 1 };
    },
  };
}

function frameOf(draft: Draft, heard: string): Frame {
  const facts = { heard, span: [0, heard.length], known: {}, doubt: [] } as const;
  if ('statement' in draft) return { group: 0, ...facts, ...draft, frame: 'statement' };
  if ('change' in draft) return { target: {}, ...facts, ...draft, frame: 'correction' };
  return { frame: 'command', heard, span: [0, heard.length], command: draft.command };
}

/** The examination after all the script's texts, each a minute after the one before. */
export function hearAll(script: Script): Exam<number> {
  const reader = fakeReader(script);
  const start = beginExam(reader, { device: 'test', startedAt: START, zone: ZONE });
  return Object.keys(script).reduce(
    (exam, text, index) =>
      hearUtterance(exam, reader, { text, heardAt: START + (index + 1) * 60_000, zone: ZONE }),
    start,
  );
}

export const finding = (
  slots: Partial<Extract<Statement, { kind: 'finding' }>> = {},
): { statement: Extract<Statement, { kind: 'finding' }> } => ({
  statement: { kind: 'finding', site: 'wrist', side: 'left', finding: 'swelling', present: true, ...slots },
});

export const pulse = (rate: number): { statement: Statement } => ({
  statement: { kind: 'vital', vital: 'pulse', value: { rate, quality: ['strong'] } },
});

export const visit = (): { statement: Statement } => ({
  statement: { kind: 'visit', site: 'wrist', side: 'left' },
});

export const note = (text: string): { statement: Statement } => ({ statement: { kind: 'note', text } });
