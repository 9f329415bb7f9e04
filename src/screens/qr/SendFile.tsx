// The same bytes as a file: shared where the device can share files, saved everywhere else.

import { useState } from 'preact/hooks';
import { download } from '../records/download.ts';

/** No word of the record is in its name. */
const fileName = (record: string): string => `${record.slice(0, 8)}.fieldsay`;

const canShare = (file: File): boolean =>
  typeof navigator.canShare === 'function' && navigator.canShare({ files: [file] });

export function SendFile({
  bytes,
  name,
}: {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly name: string;
}) {
  const [fault, setFault] = useState(false);
  const file = new File([bytes], fileName(name), { type: 'application/octet-stream' });
  const share = async () => {
    try {
      await navigator.share({ files: [file] });
    } catch (error) {
      // A person who closes the list of ways to share has done nothing wrong.
      setFault(!(error instanceof DOMException && error.name === 'AbortError'));
    }
  };
  return (
    <>
      <div class="choices even">
        {canShare(file) && (
          <button type="button" class="button" onClick={() => void share()}>
            Share as a file
          </button>
        )}
        <button type="button" class="button" onClick={() => download(fileName(name), bytes)}>
          Save as a file
        </button>
      </div>
      {fault && <p role="alert">The device did not share it: save it as a file.</p>}
    </>
  );
}
