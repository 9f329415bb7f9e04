// The locked page: a passphrase opens it, a wrong one is answered plainly, and an examination can begin all the same.

import { useEffect, useRef, useState } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';
import { openLast } from './restore.ts';

const seconds = (ms: number): string => {
  const all = Math.ceil(ms / 1000);
  return all < 60 ? `${all} s` : `${Math.floor(all / 60)} min ${all % 60} s`;
};

export function LockScreen({ hasPasskey }: { readonly hasPasskey: boolean }) {
  const { desk } = useTools();
  const { door } = desk;
  const field = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  const [until, setUntil] = useState(0);
  const [now, setNow] = useState(desk.clock());
  useEffect(() => {
    field.current?.focus();
    door.wait().then(
      (ms) => ms > 0 && setUntil(desk.clock() + ms),
      () => undefined,
    );
  }, []);
  const wait = Math.max(0, until - now);
  useEffect(() => {
    const timer = setInterval(() => setNow(desk.clock()), 500);
    return () => clearInterval(timer);
  }, []);
  const goOn = async (kind: Awaited<ReturnType<typeof door.unlock>>) => {
    if (kind === 'open') {
      const reader = desk.reader.value;
      if (reader !== null) await openLast(desk, reader);
      if (desk.role.value === 'writes') void door.sealAnew().catch(() => undefined);
      return;
    }
    const ms = await door.wait();
    setNow(desk.clock());
    setUntil(desk.clock() + ms);
    if (kind === 'wrong') setSaid('That is not the passphrase. Nothing was changed or lost.');
  };
  const tryIt = async () => {
    const passphrase = field.current?.value ?? '';
    if (passphrase === '' || busy) return;
    setBusy(true);
    setSaid('');
    try {
      await goOn(await door.unlock(passphrase));
    } catch {
      setSaid('The device’s storage could not be read. Nothing was changed; try again.');
    }
    if (field.current !== null) field.current.value = '';
    setBusy(false);
  };
  return (
    <main class="lock">
      <h1>Fieldsay is locked</h1>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void tryIt();
        }}
      >
        <label for="passphrase">Passphrase</label>
        <input id="passphrase" ref={field} type="password" autocomplete="current-password" />
        <button type="submit" class="button primary wide" disabled={busy || wait > 0}>
          {busy ? 'Working out the key …' : 'Unlock'}
        </button>
      </form>
      <p role="alert">
        {said} {wait > 0 && `Wait ${seconds(wait)} before the next try.`}
      </p>
      {hasPasskey && <WithPasskey goOn={goOn} say={setSaid} />}
      <section aria-labelledby="at-once" class="lock-else">
        <h2 id="at-once">A patient cannot wait?</h2>
        <p>
          Begin at once. The new record is kept and sealed like the others; what was kept before stays locked,
          and after a reload the new one needs the passphrase too.
        </p>
        <button type="button" class="button wide big" onClick={() => void door.beginForOne()}>
          Begin a new examination
        </button>
      </section>
    </main>
  );
}

function WithPasskey({
  goOn,
  say,
}: {
  readonly goOn: (kind: 'open' | 'wrong' | 'wait' | 'not-locked') => Promise<void>;
  readonly say: (text: string) => void;
}) {
  const { desk } = useTools();
  return (
    <button
      type="button"
      class="button wide big"
      onClick={async () => {
        const { askPasskey } = await import('./passkey.ts');
        const answer = await askPasskey(desk.shelf);
        if (answer.kind === 'secret') await goOn(await desk.door.unlockWithSecret(answer.secret));
        else say(answer.why);
      }}
    >
      Unlock with this device’s passkey
    </button>
  );
}
