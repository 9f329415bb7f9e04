// The exam panel: what is being heard, the site in mind, what the last words became, and a line to type as the last way.

import { useEffect, useRef } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';
import { Listen } from '../listen/Listen.tsx';
import { Demos } from '../play/Demos.tsx';
import { OpenTalk } from './OpenTalk.tsx';
import { SaidHead, SaidList } from './SaidList.tsx';
import { TalkBox } from './TalkBox.tsx';
import { useSaid } from './use-said.ts';

export function Talk() {
  const { desk } = useTools();
  const record = desk.record.value?.facts.id ?? null;
  const said = useSaid();
  const top = useRef<HTMLDivElement>(null);
  // Another record is shown from its top.
  useEffect(() => {
    if (record !== null) top.current?.closest('.panel')?.scrollTo(0, 0);
  }, [record]);
  return (
    <>
      <div ref={top} class="now-heard">
        <Listen />
        {said !== null && <SaidHead of={said} />}
      </div>
      {said !== null ? <SaidList of={said} /> : <Start />}
      <TalkBox />
    </>
  );
}

function Start() {
  return (
    <div class="start">
      <p>
        Talk as you examine, head to toe: a line at a time, with the side. Each line becomes entries that you
        confirm, by region, with a timeline and a radio report beside them.
      </p>
      <OpenTalk />
      <Demos />
      <p class="small-print">
        The record is kept in this browser, encrypted, so that a reload does not lose it. Set a passphrase
        under Records before a patient’s record stays on a device that others can use.
      </p>
    </div>
  );
}
