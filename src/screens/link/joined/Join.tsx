// Joining: the code is scanned, opened or typed, what it means is shown, and nothing happens before it is agreed to.

import { useState } from 'preact/hooks';
import { type JoinCode, readJoinText } from '../../../link/index.ts';
import { useTools } from '../../frame/tools.ts';
import type { Joined } from './index.ts';
import { JoinScan } from './JoinScan.tsx';

interface Props {
  readonly joined: Joined;
  readonly code: JoinCode | null;
  /** why the code that the page was opened with is none, or null */
  readonly wrong: string | null;
  readonly take: (code: JoinCode | null) => void;
  readonly close: () => void;
}

export function Join({ joined, code, wrong, take, close }: Props) {
  const { desk } = useTools();
  const [why, setWhy] = useState<string | null>(wrong);
  const [typed, setTyped] = useState('');
  const [withOpen, setWithOpen] = useState(true);
  const [working, setWorking] = useState(false);
  const record = desk.record.value;
  const hasOpen = record !== null && record.facts.kind === 'live';
  const read = (text: string): boolean => {
    const found = readJoinText(text);
    setWhy(found.kind === 'refused' ? found.why : null);
    if (found.kind === 'code') take(found.code);
    return found.kind === 'code';
  };
  if (code === null)
    return (
      <>
        <p>
          One incident, many responders: what this device records is also sent to the command post, sealed so
          that only the incident’s own devices read it. The record here stays as it is. Ask the post for a
          code.
        </p>
        <JoinScan found={read} />
        <label class="field-name" for="join-text">
          Or type or paste the code
        </label>
        <input
          id="join-text"
          value={typed}
          autocomplete="off"
          spellcheck={false}
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
        <button type="button" class="button wide" disabled={typed.trim() === ''} onClick={() => read(typed)}>
          Read the code
        </button>
        <label class="field-name" for="join-file">
          Or a file with the code
        </label>
        <input
          id="join-file"
          type="file"
          accept=".txt,text/plain"
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            void file?.text().then(read, () => setWhy('The file could not be read.'));
          }}
        />
        <Trouble why={why} />
      </>
    );
  const foreign = new URL(code.address).origin !== window.location.origin;
  if (foreign)
    return (
      <>
        <p class="notice trouble" role="alert">
          The post of this incident is at {code.address}, and this page came from elsewhere. A page talks only
          to where it came from, so open that address and scan the code there. Records kept here stay here;
          “QR or file” takes one along.
        </p>
        <button type="button" class="button wide" onClick={() => take(null)}>
          Another code
        </button>
      </>
    );
  const join = async () => {
    setWorking(true);
    setWhy(await joined.join(code, withOpen && hasOpen));
    setWorking(false);
  };
  return (
    <>
      <p>
        Join incident <b>{code.incident}</b> as <b>{code.name}</b>? Every record begun from now on is sent to
        the post at {code.address}.
      </p>
      {joined.member.value !== null && (
        <p class="notice trouble">
          This device leaves incident {joined.member.value.code.incident}, and is{' '}
          {joined.member.value.code.name} no more.
        </p>
      )}
      {hasOpen && (
        <label class="tick">
          <input type="checkbox" checked={withOpen} onChange={() => setWithOpen(!withOpen)} /> Send the open
          record too
        </label>
      )}
      <Trouble why={why} />
      <button type="button" class="button primary wide" disabled={working} onClick={() => void join()}>
        Join the incident
      </button>
      <button type="button" class="button big wide" onClick={close}>
        Not now
      </button>
    </>
  );
}

const Trouble = ({ why }: { readonly why: string | null }) =>
  why === null ? null : (
    <p class="notice trouble" role="alert">
      {why}
    </p>
  );
