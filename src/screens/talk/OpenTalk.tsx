// Opening a talk file from the device.

import { useRef } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';
import { openTalkFile } from '../play/open-talk.ts';

export function OpenTalk({ opened }: { readonly opened?: () => void }) {
  const { desk, player } = useTools();
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" class="button wide" onClick={() => chooser.current?.click()}>
        Open a .talk file
      </button>
      <input
        ref={chooser}
        type="file"
        accept=".talk,text/plain"
        hidden
        aria-label="Talk file"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file !== undefined) void openTalkFile(desk, player, file).then(opened);
          event.currentTarget.value = '';
        }}
      />
    </>
  );
}
