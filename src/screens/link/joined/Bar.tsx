// One line at the head of the page: what the post has, and the way to the rest.

import { useComputed } from '@preact/signals';
import { barWords } from '../../../link/index.ts';
import { useTools } from '../../frame/tools.ts';
import { isShared } from './member.ts';
import { openQuestions } from './questions.ts';
import './link.css';

export function Bar() {
  const { link, sheet, desk } = useTools();
  const joined = link.joined.value;
  const words = useComputed(() => {
    const state = joined?.state.value ?? null;
    return state === null ? null : barWords(state, Math.max(desk.wall.value, desk.clock()));
  });
  if (joined === null) return null;
  const member = joined.member.value;
  if (member === null) return null;
  const record = desk.record.value;
  const apart = record !== null && record.facts.kind === 'live' && !isShared(member, record.facts);
  const waiting =
    openQuestions(desk).length + elsewhere(joined.state.value?.word?.questions ?? [], record?.facts.id);
  const { tone = 'waits', text = joined.fault.value ?? 'The link begins …' } = words.value ?? {};
  const shown = apart ? 'This record is not sent to the post.' : text;
  return (
    <div class={`link-bar ${joined.fault.value === null ? tone : 'trouble'}`}>
      <p role="status" class="link-text">
        {shown}
      </p>
      <button
        type="button"
        class="button small"
        onClick={() => {
          sheet.value = 'link';
        }}
      >
        {waiting === 0 ? 'Team' : `Team: ${waiting} asked`}
      </button>
    </div>
  );
}

const elsewhere = (questions: readonly { readonly record: string }[], open: string | undefined): number =>
  questions.filter(({ record }) => record !== open).length;
