// The same record as a file: shared where the device can share files, saved everywhere else.

import { useState } from 'preact/hooks';
import { download } from '../records/download.ts';

/** No word of the record is in its name. */
const fileName = (record: string): string => `fieldsay-${record.slice(0, 8)}.json`;

const canShare = (file: File): boolean =>
  typeof navigator.canShare === 'function' && navigator.canShare({ files: [file] });

interface Props {
  readonly text: string;
  readonly name: string;
  readonly sent: (by: 'file' | 'share') => void;
}

export function SendFile({ text, name, sent }: Props) {
  const [fault, setFault] = useState(false);
  const file = new File([text], fileName(name), { type: 'application/json' });
  const share = async () => {
    try {
      await navigator.share({ files: [file] });
      sent('share');
    } catch (error) {
      // A person who closes the list of ways to share has done nothing wrong.
      setFault(!(error instanceof DOMException && error.name === 'AbortError'));
    }
  };
  const save = () => {
    download(fileName(name), text);
    sent('file');
  };
  return (
    <>
      <div class="choices even">
        {canShare(file) && (
          <button type="button" class="button" onClick={() => void share()}>
            Share as a file
          </button>
        )}
        <button type="button" class="button" onClick={save}>
          Save as a file
        </button>
      </div>
      {fault && <p role="alert">The device did not share it: save it as a file.</p>}
    </>
  );
}
