// One line to type in: Enter says it, and pasted lines are said one by one.

import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { isTalkFile } from '../../record/talk/index.ts';
import { say } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { openTalkText } from '../play/open-talk.ts';

const LINES = /\r\n|\n|\r/;

export function TalkBox() {
  const { desk, player } = useTools();
  const draft = useSignal('');
  const field = useRef<HTMLInputElement>(null);
  const sayIt = () => {
    say(desk, [draft.value], { engine: 'typed' });
    draft.value = '';
    field.current?.focus();
  };
  const paste = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!LINES.test(text.trim())) return;
    event.preventDefault();
    if (isTalkFile(text)) openTalkText(desk, player, 'The pasted talk', text);
    else say(desk, text.split(LINES), { engine: 'pasted' });
  };
  return (
    <form
      class="talk-box"
      onSubmit={(event) => {
        event.preventDefault();
        sayIt();
      }}
    >
      <label for="talk-line">What is said</label>
      <div class="talk-line">
        <input
          id="talk-line"
          ref={field}
          type="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          enterkeyhint="send"
          placeholder="left forearm, deformity and swelling"
          value={draft.value}
          onInput={(event) => {
            draft.value = event.currentTarget.value;
          }}
          onPaste={paste}
        />
        <button type="submit" class="button">
          Say it
        </button>
      </div>
      {desk.waiting.value.length > 0 && (
        <p role="status">Waiting to be read: {desk.waiting.value.map(({ text }) => `“${text}”`).join(' ')}</p>
      )}
    </form>
  );
}
