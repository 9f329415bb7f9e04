// Ready for the mountain: every check with its real state in words, and how to mend what is not so.

import { useEffect, useState } from 'preact/hooks';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { BATTERY, checksOf, type Facts } from './checks.ts';

const MARKS = { yes: '✓ Yes', no: '✗ Not yet', unknown: '? Unknown' } as const;

/** What the browser tells only when it is asked. */
type Asked = Pick<Facts, 'offline' | 'microphone'>;

async function ask(): Promise<Asked> {
  const worker = await navigator.serviceWorker?.getRegistration();
  return { offline: (worker?.active ?? null) !== null, microphone: await microphone() };
}

async function microphone(): Promise<Facts['microphone']> {
  try {
    const { state } = await navigator.permissions.query({ name: 'microphone' as PermissionName });
    return state;
  } catch {
    return null;
  }
}

export function Ready({ close }: { readonly close: () => void }) {
  const { ear, persistence, wake, speaker } = useTools();
  const [asked, setAsked] = useState<Asked>({ offline: null, microphone: null });
  useEffect(() => {
    void ear.look();
    ask().then(setAsked, () => undefined);
  }, []);
  const model = ear.model.value.state;
  const checks = checksOf({
    ...asked,
    installed: matchMedia('(display-mode: standalone)').matches,
    model: model === 'unknown' ? null : model === 'stored',
    persistent: persistence.value === 'promised' ? true : persistence.value === 'not-promised' ? false : null,
    wake: wake.value,
    voice: speaker.voice.value,
  });
  return (
    <Sheet title="Ready for the mountain?" close={close}>
      <ul class="plain-list checks">
        {checks.map(({ name, state, says, mend }) => (
          <li key={name} class={`check ${state}`}>
            <p>
              <b>{name}</b> <span class={`mark check-${state}`}>{MARKS[state]}</span>
            </p>
            <p>{says}</p>
            {mend !== null && <p class="small-print">{mend}</p>}
          </li>
        ))}
      </ul>
      <p>{BATTERY}</p>
    </Sheet>
  );
}
