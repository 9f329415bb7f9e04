// What the page has to say about itself: what stays so until it is mended, under the head; the last thing done and an
// update that waits, over it for a moment.

import { isUnderWay } from '../desk/index.ts';
import { hearingNow } from '../listen/EarSign.tsx';
import { DamageNotice } from '../records/DamageNotice.tsx';
import { FollowNotice } from '../records/FollowNotice.tsx';
import { shown } from './panels.ts';
import { useTools } from './tools.ts';

/** The patient in mind must stay in sight beside these, so they have a place of their own. */
export function StandingNotices() {
  const { desk, heardSounds } = useTools();
  const soundFault = heardSounds.fault.value;
  const fault = desk.keeper.fault.value;
  return (
    <div class="standing" role="status">
      <NotHeard />
      {fault !== null && (
        <p class="notice trouble">
          <span>{fault}</span>
        </p>
      )}
      {soundFault !== null && (
        <p class="notice">
          <span>{soundFault}</span>
        </p>
      )}
      <FollowNotice />
      <DamageNotice />
    </div>
  );
}

/** That it hears nothing though it should is told on every panel; the exam has its own strip for it. */
function NotHeard() {
  const tools = useTools();
  const { sign, words } = hearingNow(tools);
  if (sign !== 'deaf' || shown(tools.panel.value, tools.columns.value).includes('talk')) return null;
  return (
    <p class="notice trouble">
      <span>{words}</span>
    </p>
  );
}

export function Notices() {
  const { desk, update } = useTools();
  const notice = desk.notice.value;
  const offer = update.waits.value && !isUnderWay(desk.record.value, desk.wall.value);
  return (
    <div class="notices" role="status">
      {offer && (
        <p class="notice">
          A new version of this page waits. Records stay.{' '}
          <button type="button" class="button" onClick={update.take}>
            Take it now
          </button>
        </p>
      )}
      {notice !== null && (
        <p class={`notice ${notice.tone}`}>
          {notice.text}{' '}
          <button
            type="button"
            class="button"
            onClick={() => {
              desk.notice.value = null;
            }}
          >
            Put away
          </button>
        </p>
      )}
    </div>
  );
}
