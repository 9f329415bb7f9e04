// The report panel: the radio script above the timeline, or the handover in one of the written orders.

import { Fragment } from 'preact';
import { imistAmbo, mist, sbar, soap } from '../../handoff/index.ts';
import { useTools, useWorked } from '../frame/tools.ts';
import { useAfterPaint } from '../later/after-paint.ts';
import { RadioScript } from './RadioScript.tsx';
import { REPORT_ORDERS } from './report-orders.ts';
import { Timeline } from './Timeline.tsx';
import { Written } from './Written.tsx';
import { WAYS, type WayName } from './ways.ts';

const WAY_NAMES = Object.keys(WAYS) as readonly WayName[];

const WRITTEN = { ATMIST: mist, 'IMIST-AMBO': imistAmbo, SBAR: sbar, SOAP: soap } as const;

export function Report() {
  const { desk, order: view } = useTools();
  const record = desk.record.value;
  if (record === null)
    return (
      <>
        <p class="empty">No record yet. Reports are made from what was said.</p>
        <Ways names={WAY_NAMES.filter((name) => !WAYS[name].needsRecord)} />
      </>
    );
  return (
    <>
      <Ways names={WAY_NAMES} />
      <div class="choices thirds">
        {REPORT_ORDERS.map(([id, name]) => (
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
      {view.value === 'radio' ? (
        <Fragment key={record.facts.id}>
          <RadioScript />
          <Timeline />
        </Fragment>
      ) : (
        <WrittenNow key={`${view.value} ${record.facts.id}`} name={view.value} />
      )}
    </>
  );
}

function WrittenNow({ name }: { readonly name: keyof typeof WRITTEN }) {
  const { report } = useWorked();
  return <Written name={name} text={useAfterPaint(() => WRITTEN[name](report.value))} />;
}

/** The ways of handing over, each a button. */
function Ways({ names }: { readonly names: readonly WayName[] }) {
  const { way } = useTools();
  return (
    <div class="choices pairs">
      {names.map((one) => (
        <button
          key={one}
          type="button"
          class={`button ${one === 'radio' ? 'primary' : 'big'}`}
          onClick={() => {
            way.value = one;
          }}
        >
          {WAYS[one].name}
        </button>
      ))}
    </div>
  );
}
