// One line at the head of the page: what the post has, and the way to the rest.

import { useComputed } from '@preact/signals';
import { barWords, writesNext } from '../../../link/index.ts';
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
  const writes = writesNext(record?.exam.state.handover ?? []);
  const offers = joined.handing.value?.offers.value.length ?? 0;
  const shown = [
    writes.kind === 'elsewhere'
      ? `${writes.name} writes this record now; what is said here is kept apart.`
      : '',
    apart ? 'This record is not sent to the post.' : '',
    text,
  ]
    .filter((part) => part !== '')
    .join(' ');
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
        {offers > 0 ? 'Team: an offer' : waiting === 0 ? 'Team' : `Team: ${waiting} asked`}
      </button>
    </div>
  );
}

const elsewhere = (questions: readonly { readonly record: string }[], open: string | undefined): number =>
  questions.filter(({ record }) => record !== open).length;
