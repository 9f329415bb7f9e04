// The report panel: the radio script above the timeline, or the handover in one of the written orders.

import { useSignal } from '@preact/signals';
import { mist, soap } from '../../handoff/index.ts';
import { useTools } from '../frame/tools.ts';
import { RadioScript } from './RadioScript.tsx';
import { Timeline } from './Timeline.tsx';
import { Written } from './Written.tsx';

const VIEWS = [
  ['radio', 'Radio, timeline'],
  ['mist', 'ATMIST'],
  ['soap', 'SOAP'],
] as const;

export function Report() {
  const { derived, desk } = useTools();
  const view = useSignal<(typeof VIEWS)[number][0]>('radio');
  if (desk.record.value === null)
    return <p class="empty">No record yet. Reports are made from what was said.</p>;
  return (
    <>
      <div class="choices even">
        {VIEWS.map(([id, name]) => (
          <button
            key={id}
            type="button"
            class="button"
            aria-pressed={view.value === id}
            onClick={() => {
              view.value = id;
            }}
          >
            {name}
          </button>
        ))}
      </div>
      {view.value === 'radio' && (
        <>
          <RadioScript />
          <Timeline />
        </>
      )}
      {view.value === 'mist' && <Written name="ATMIST" text={mist(derived.report.value)} />}
      {view.value === 'soap' && <Written name="SOAP" text={soap(derived.report.value)} />}
    </>
  );
}
