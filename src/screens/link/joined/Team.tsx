// For a device in an incident: what the post has and what is in the way, its questions, the others, and leaving.

import { useState } from 'preact/hooks';
import { barWords } from '../../../link/index.ts';
import { passOn } from '../../desk/index.ts';
import { useTools } from '../../frame/tools.ts';
import { openKept } from '../../records/restore.ts';
import { HandOn, Offers } from './Hand.tsx';
import type { Joined } from './index.ts';
import { isShared, type Member } from './member.ts';
import { openQuestions } from './questions.ts';

interface Props {
  readonly joined: Joined;
  readonly member: Member;
  readonly close: () => void;
}

export function Team({ joined, member, close }: Props) {
  const { desk } = useTools();
  const state = joined.state.value;
  const handing = joined.handing.value;
  const record = desk.record.value;
  const words = state === null ? null : barWords(state, desk.clock());
  const away = (state?.word?.questions ?? []).filter((question) => question.record !== record?.facts.id);
  return (
    <>
      <p>
        Incident <b>{member.code.incident}</b>, this device is <b>{member.code.name}</b>.
      </p>
      {joined.fault.value !== null && <p class="notice trouble">{joined.fault.value}</p>}
      {words !== null && (
        <div class={`notice ${words.tone === 'trouble' ? 'trouble' : ''}`} role="status">
          <p>{words.text}</p>
          {words.more.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      )}
      <p class="small-print">
        “At the post” means written on the post’s disk. Nothing is removed here by it.
      </p>
      {record !== null && record.facts.kind === 'live' && !isShared(member, record.facts) && (
        <button type="button" class="button wide" onClick={() => void joined.share(record.facts.id)}>
          Send the open record too
        </button>
      )}
      {handing !== null && <Offers handing={handing} nameOf={joined.nameOf} />}
      {openQuestions(desk).map(({ id, text }) => (
        <Answer key={id} question={id} text={text} />
      ))}
      {away.map(({ id, record: about, text }) => (
        <div key={id} class="notice">
          <p>The post asks about another record: “{text}”</p>
          <button
            type="button"
            class="button"
            onClick={() => {
              const reader = desk.reader.value;
              if (reader !== null) void openKept(desk, reader, about);
            }}
          >
            Open that record
          </button>
        </div>
      ))}
      {handing !== null && <HandOn handing={handing} mates={state?.word?.mates ?? []} />}
      <Leave
        joined={joined}
        open={state === null ? 0 : state.tally.made - state.tally.atPost}
        close={close}
      />
    </>
  );
}

function Answer({ question, text }: { readonly question: string; readonly text: string }) {
  const { desk } = useTools();
  const [answer, setAnswer] = useState('');
  return (
    <div class="notice">
      <p>
        The post asks: <b>“{text}”</b>
      </p>
      <input
        aria-label={`Answer to “${text}”`}
        value={answer}
        autocomplete="off"
        onInput={(event) => setAnswer(event.currentTarget.value)}
      />
      <button
        type="button"
        class="button"
        disabled={answer.trim() === ''}
        onClick={() => passOn(desk, { step: 'answer', question, text: answer.trim() })}
      >
        Answer
      </button>
    </div>
  );
}

function Leave({
  joined,
  open,
  close,
}: {
  readonly joined: Joined;
  readonly open: number;
  readonly close: () => void;
}) {
  const [sure, setSure] = useState(false);
  if (!sure)
    return (
      <button type="button" class="button big wide" onClick={() => setSure(true)}>
        Leave the incident …
      </button>
    );
  return (
    <div class="notice trouble">
      <p>
        {open === 0
          ? 'All of this device is at the post.'
          : `${open} are NOT at the post and will not be sent.`}{' '}
        The records stay on this device.
      </p>
      <button type="button" class="button" onClick={() => void joined.leave().then(close)}>
        Leave it
      </button>
    </div>
  );
}
