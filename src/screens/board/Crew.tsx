// Lets a phone in by a code that is shown once, and puts a lost one out.

import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { post } from './feed.ts';
import type { BoardModel } from './model.ts';

interface Issued {
  readonly name: string;
  readonly text: string;
}

export function Crew({ model }: { readonly model: BoardModel }) {
  const name = useSignal('');
  const issued = useSignal<Issued | null>(null);
  const said = useSignal('');
  const issue = async () => {
    const done = await post('crew/issue', model.token, { name: name.value });
    said.value = done.kind === 'failed' ? `No code: ${done.why}` : '';
    if (done.kind === 'failed') return;
    issued.value = { name: String(done.value.name), text: String(done.value.text) };
    name.value = '';
  };
  const putOut = async (device: string, who: string) => {
    const done = await post('crew/out', model.token, { device });
    said.value =
      done.kind === 'failed'
        ? `Not put out: ${done.why}`
        : `${who} was put out: the server lets that phone in no more. It may still hold the incident’s key and its own records.`;
  };
  return (
    <section aria-label="Let phones in" class="board-part">
      <h2>Let phones in</h2>
      <label for="crew-name">Who carries it</label>
      <input
        id="crew-name"
        value={name.value}
        maxLength={60}
        autocomplete="off"
        onInput={(event) => {
          name.value = event.currentTarget.value;
        }}
      />
      <button type="button" class="button primary" onClick={() => void issue()}>
        Make a code
      </button>
      {issued.value !== null && (
        <Code key={issued.value.text} issued={issued.value} done={() => (issued.value = null)} />
      )}
      <p role="status">{said.value}</p>
      <ul class="plain-list">
        {model.devices.value
          .filter(({ out }) => !out)
          .map(({ device, name: who }) => (
            <li key={device} class="board-out">
              <span>
                {who} <span class="small-print">{device}</span>
              </span>
              <PutOut who={who} go={() => void putOut(device, who)} />
            </li>
          ))}
      </ul>
    </section>
  );
}

function PutOut({ who, go }: { readonly who: string; readonly go: () => void }) {
  const sure = useSignal(false);
  return (
    <button
      type="button"
      class={`button ${sure.value ? 'danger' : ''}`}
      onClick={() => {
        if (sure.value) go();
        sure.value = !sure.value;
      }}
    >
      {sure.value ? `Put ${who} out for good` : `Put ${who} out …`}
    </button>
  );
}

function Code({ issued, done }: { readonly issued: Issued; readonly done: () => void }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const failed = useSignal(false);
  useEffect(() => {
    import('./code-symbol.ts').then(
      ({ drawCode }) => canvas.current !== null && drawCode(canvas.current, issued.text),
      () => {
        failed.value = true;
      },
    );
  }, []);
  return (
    <div class="board-code">
      <p>
        For <b>{issued.name}</b>, and for one phone only. Whoever sees it can join as {issued.name}.
      </p>
      {failed.value && <p class="board-fault">The symbol could not be drawn; take the text below.</p>}
      <canvas ref={canvas} class="board-symbol" role="img" aria-label={`Code for ${issued.name}`} />
      <details>
        <summary>As text</summary>
        <p class="board-code-text">{issued.text}</p>
        <a
          class="button"
          download={`join-${issued.name}.txt`}
          href={`data:text/plain,${encodeURIComponent(issued.text)}`}
        >
          Save as a file
        </a>
      </details>
      <button type="button" class="button" onClick={done}>
        It was scanned; put it away
      </button>
    </div>
  );
}
