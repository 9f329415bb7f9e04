// A question of the post goes into the record that it is about, once, as soon as that record is open; the answer beside it.

import type { Word } from '../../../link/index.ts';
import type { KeptStep } from '../../../record/index.ts';
import { type Desk, done, passOn } from '../../desk/index.ts';

type Asked = KeptStep & { readonly step: 'question' };

const isAsked = (step: KeptStep): step is Asked => step.step === 'question' && step.asked !== undefined;

/** Logs what the post asks about the open record and is not in it yet. */
export function logQuestions(desk: Desk, word: Word): void {
  const record = desk.record.value;
  if (record === null) return;
  const there = record.exam.state.handover.filter(isAsked).map(({ asked }) => asked);
  for (const { id, record: about, text } of word.questions) {
    if (about !== record.facts.id || there.includes(id)) continue;
    passOn(desk, { step: 'question', text, asked: id });
    desk.notice.value = done(`The post asks: “${text}” Answer under “Team”.`);
  }
}

/** The post's questions in the open record that nobody answered yet. */
export function openQuestions(desk: Desk): readonly Asked[] {
  const steps = desk.record.value?.exam.state.handover ?? [];
  const answered = steps.flatMap((step) => (step.step === 'answer' ? [step.question] : []));
  return steps.filter(isAsked).filter(({ id }) => !answered.includes(id));
}
