// Taking records out as one encrypted file, and in again; the code for it is fetched when it is used.

import { useRef, useState } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';
import { download } from './download.ts';
import { PassphraseForm } from './PassphraseForm.tsx';
import { openKept } from './restore.ts';
import { SecretField } from './SecretField.tsx';
import type { Shown } from './summary.ts';
import { whyNot } from './words.ts';

interface Props {
  readonly records: readonly Shown[];
  readonly changed: () => void;
}

export function Transfer({ records, changed }: Props) {
  const { desk } = useTools();
  const open = desk.record.value?.facts.id;
  const [out, setOut] = useState('');
  const save = (ids: readonly string[], name: string) => async (passphrase: string) => {
    const { exportRecords } = await import('../../record/store/transfer/index.ts');
    const keys = desk.door.keys();
    if (keys === null) return { kind: 'refused', why: 'The page is locked.' } as const;
    await desk.keeper.settled();
    const file = await exportRecords(desk.shelf, keys, ids, passphrase);
    if (file.kind === 'refused') return file;
    download(name, file.text);
    setOut(`${file.records} of ${ids.length} records were written to ${name}. Sound is not in it.`);
    return { kind: 'set', keys } as const;
  };
  return (
    <section aria-labelledby="transfer" class="part">
      <h3 id="transfer" tabIndex={-1}>
        Out and in
      </h3>
      {open !== undefined && (
        <PassphraseForm
          title="Export the open record"
          submit={save([open], `fieldsay-${open.slice(0, 8)}.json`)}
        />
      )}
      {records.length > (open === undefined ? 0 : 1) && (
        <PassphraseForm
          title={records.length === 1 ? 'Export the one record' : `Export all ${records.length} records`}
          submit={save(
            records.map(({ facts }) => facts.id),
            'fieldsay-all.json',
          )}
        />
      )}
      <p role="status">{out}</p>
      <Import changed={changed} />
    </section>
  );
}

function Import({ changed }: Pick<Props, 'changed'>) {
  const { desk } = useTools();
  const chooser = useRef<HTMLInputElement>(null);
  const secret = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState<readonly string[]>([]);
  const take = async (file: File): Promise<readonly string[]> => {
    const { readExport, mergeRecord } = await import('../../record/store/transfer/index.ts');
    const keys = desk.door.keys();
    if (keys === null || desk.role.value !== 'writes')
      return ['Not done: this page does not write now. Take the recording over first.'];
    const read = await readExport(await file.text(), secret.current?.value ?? '');
    if (read.kind === 'refused') return [`${read.why} Nothing was changed.`];
    await desk.keeper.settled();
    let [added, here] = [0, 0];
    const differ: string[] = [];
    for (const one of read.records) {
      const merged = await mergeRecord(desk.shelf, keys, one);
      added += merged.added;
      here += merged.here;
      differ.push(...merged.differ);
    }
    const [open, reader] = [desk.record.value?.facts.id, desk.reader.value];
    // Whatever was read of a log before must be read anew: its end is elsewhere now.
    for (const { facts } of read.records) if (facts.id !== open) await desk.keeper.read(facts.id);
    if (open !== undefined && reader !== null && read.records.some(({ facts }) => facts.id === open))
      await openKept(desk, reader, open);
    changed();
    return [
      `${read.records.length} records taken in: ${added} events added, ${here} were here already.`,
      ...(differ.length === 0
        ? []
        : [
            `${differ.length} events are here with other content (${differ.slice(0, 3).join(', ')}); what is here stays.`,
          ]),
      ...read.faults.map((fault) => `Not taken in: ${fault}`),
    ];
  };
  return (
    <details class="fold">
      <summary>Import a file</summary>
      <div class="stacked">
        <SecretField label="Passphrase of the file" field={secret} shown={false} autocomplete="off" />
        <button type="button" class="button wide" onClick={() => chooser.current?.click()}>
          Choose the file
        </button>
        <input
          ref={chooser}
          type="file"
          accept=".json,application/json"
          hidden
          aria-label="Exported file"
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            setSaid(['Reading …']);
            if (file !== undefined)
              take(file).then(setSaid, (error) => setSaid([`Not done: ${whyNot(error)}`]));
            event.currentTarget.value = '';
          }}
        />
        <ul class="plain-list" role="status">
          {said.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </div>
    </details>
  );
}
