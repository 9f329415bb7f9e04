// Ready for the mountain: every check with its real state in words, and a button or a sentence that mends what is not so.

import { useEffect, useState } from 'preact/hooks';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools } from '../frame/tools.ts';
import { type Asked, ask, askForMicrophone, UNASKED } from './ask.ts';
import { BATTERY, type Check, checksOf, type Mending } from './checks.ts';

const MARKS = { yes: '✓ Yes', no: '✗ Not yet', unknown: '? Unknown' } as const;

const MEND_WORDS: Readonly<Record<Mending, string>> = {
  install: 'Install the page',
  hearing: 'Set hearing up',
  persist: 'Ask the browser again',
  microphone: 'Ask for the microphone',
};

export function Ready({ close }: { readonly close: () => void }) {
  const { ear, persistence, wake, speaker, install, sheet } = useTools();
  const [asked, setAsked] = useState<Asked>(UNASKED);
  const look = async () => setAsked(await ask());
  useEffect(() => {
    void ear.look();
    look().catch(() => undefined);
  }, []);
  const model = ear.model.value.state;
  const { wakeTried, ...facts } = asked;
  const checks = checksOf({
    ...facts,
    installed: matchMedia('(display-mode: standalone)').matches,
    installable: install.isOffered.value,
    model: model === 'unknown' ? null : model === 'stored',
    persistent: persistence.value === 'promised' ? true : persistence.value === 'not-promised' ? false : null,
    wake: wake.value === 'off' ? wakeTried : wake.value,
    voice: speaker.voice.value,
  });
  const mend = async (by: Mending): Promise<void> => {
    switch (by) {
      case 'install':
        return install.take();
      case 'hearing':
        sheet.value = 'hearing';
        return;
      case 'persist':
        if (await navigator.storage.persist()) persistence.value = 'promised';
        return;
      case 'microphone':
        await askForMicrophone();
        return look();
    }
  };
  const open = checks.filter(({ state }) => state !== 'yes').length;
  return (
    <Sheet title="Ready for the mountain?" close={close}>
      <p role="status">
        {open === 0 ? 'All of it is so.' : `${checks.length - open} of ${checks.length} are so.`}
      </p>
      <ul class="plain-list checks">
        {checks.map((one) => (
          <CheckRow key={one.name} check={one} mend={(by) => void mend(by).catch(() => undefined)} />
        ))}
      </ul>
      <p>{BATTERY}</p>
    </Sheet>
  );
}

interface RowProps {
  readonly check: Check;
  readonly mend: (by: Mending) => void;
}

function CheckRow({ check: { name, state, says, mend, by }, mend: act }: RowProps) {
  return (
    <li class={`check ${state}`}>
      <p class="check-name">
        <b>{name}</b> <span class={`mark check-${state}`}>{MARKS[state]}</span>
      </p>
      <p>
        {says} {mend !== null && <span class="small-print">{mend}</span>}
      </p>
      {by !== null && (
        <button type="button" class="button" onClick={() => act(by)}>
          {MEND_WORDS[by]}
        </button>
      )}
    </li>
  );
}
