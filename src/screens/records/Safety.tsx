// The passphrase: set, changed, locked by, and a passkey beside it; and what the browser says of its storage.

import { useEffect, useState } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';
import { IDLE_CHOICES, type IdleMinutes } from './idle.ts';
import { lockPage } from './lock.ts';
import { PassphraseForm } from './PassphraseForm.tsx';
import { makePasskey, mayHavePasskey } from './passkey.ts';
import { PERSISTENCE_WORDS, roomInWords } from './storage.ts';

export function Safety() {
  const tools = useTools();
  const door = tools.desk.door.now.value;
  const [room, setRoom] = useState('');
  useEffect(() => void roomInWords().then(setRoom), []);
  return (
    <section aria-labelledby="safety" class="part">
      <h3 id="safety">Lock and storage</h3>
      {door.state === 'without' && <p class="notice trouble">Nothing can be kept: {door.why}</p>}
      {door.state === 'open' && door.by === 'device' && <NoPassphrase />}
      {door.state === 'open' && door.by === 'passphrase' && <Locked />}
      {door.state === 'open' && door.by === 'one' && (
        <>
          <p>This record was begun while the page was locked. What was kept before stays locked.</p>
          <button type="button" class="button wide" onClick={() => void lockPage(tools)}>
            Lock, then unlock with the passphrase
          </button>
        </>
      )}
      <p class="small-print">
        {PERSISTENCE_WORDS[tools.persistence.value]} {room}
      </p>
    </section>
  );
}

function NoPassphrase() {
  const { desk } = useTools();
  return (
    <>
      <p>
        Records are encrypted under a key of this device, which lies beside them.{' '}
        <b>Whoever can use this browser can read them</b> until a passphrase is set.
      </p>
      <ul class="small-print">
        <li>
          The key guards against a search of this browser’s files for words, and cannot be read out by a
          script.
        </li>
        <li>
          It does not guard against whoever holds this device unlocked, or copies this browser’s folder.
        </li>
        <li>There is no way back to a record whose passphrase is forgotten.</li>
      </ul>
      <PassphraseForm
        title="Set a passphrase"
        submit={async (passphrase) => {
          const set = await desk.door.setPassphrase(passphrase);
          if (set.kind === 'set') void desk.door.sealAnew();
          return set;
        }}
      />
    </>
  );
}

function Locked() {
  const tools = useTools();
  const { desk, idle } = tools;
  return (
    <>
      <p>
        Records are encrypted under your passphrase. Closing the page locks it. The passphrase guards what is
        kept from whoever takes the device, not from whoever holds it while this page is unlocked.
      </p>
      <button type="button" class="button primary wide" onClick={() => void lockPage(tools)}>
        Lock now
      </button>
      <p>
        <label>
          Lock by itself after{' '}
          <select
            value={String(idle.value)}
            onChange={(event) => {
              idle.value = Number(event.currentTarget.value) as IdleMinutes;
            }}
          >
            {IDLE_CHOICES.map((minutes) => (
              <option key={minutes} value={String(minutes)}>
                {minutes === 0 ? 'never' : `${minutes} minutes untouched`}
              </option>
            ))}
          </select>
        </label>{' '}
        <span class="small-print">Not while dictation is on.</span>
      </p>
      <PassphraseForm
        title="Change the passphrase"
        asksOld
        submit={(passphrase, old) => desk.door.changePassphrase(old, passphrase)}
      />
      <Passkey />
    </>
  );
}

function Passkey() {
  const { desk } = useTools();
  const [may, setMay] = useState(false);
  useEffect(() => void mayHavePasskey().then(setMay), []);
  if (!may) return <p class="small-print">This device offers no passkey to unlock with.</p>;
  return (
    <PassphraseForm
      title="Unlock with this device’s passkey too"
      onlyOld
      submit={async (_new, old) => {
        const made = await makePasskey();
        return made.kind === 'made' ? desk.door.addPasskey(old, made) : { kind: 'refused', why: made.why };
      }}
    />
  );
}
