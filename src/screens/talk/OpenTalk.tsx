// Opening a talk file or a recording from the device.

import { useRef } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';
import { openFile } from '../listen/open-file.ts';

export function OpenTalk({ opened }: { readonly opened?: () => void }) {
  const tools = useTools();
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" class="button wide" onClick={() => chooser.current?.click()}>
        Open a .talk or .wav file
      </button>
      <input
        ref={chooser}
        type="file"
        accept=".talk,.wav,text/plain,audio/wav"
        hidden
        aria-label="Talk file or recording"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file !== undefined) void openFile(tools, file).then(opened);
          event.currentTarget.value = '';
        }}
      />
    </>
  );
}
