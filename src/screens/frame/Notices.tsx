// What the page has to say about itself: what stays so until it is mended or settled, under the head; the last thing done, over the
// end of the panels.

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
      <NewVersion />
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

/** Only while nobody is examined, so that nothing moves that a thumb may be aimed at, and beside the head, which it needs not cover. */
function NewVersion() {
  const { desk, update } = useTools();
  if (!update.waits.value || update.putOff.value || isUnderWay(desk.record.value, desk.wall.value))
    return null;
  return (
    <div class="notice">
      <span>A new version of this page waits. Records stay.</span>
      <button type="button" class="button" onClick={update.take}>
        Take it now
      </button>
      <button
        type="button"
        class="button"
        onClick={() => {
          update.putOff.value = true;
        }}
      >
        Not now
      </button>
    </div>
  );
}

/** What was done last: nothing moves for it, and neither the head nor the line to type in is under it. */
export function Notices() {
  const { desk, panel, columns } = useTools();
  const notice = desk.notice.value;
  const isAboveLine = shown(panel.value, columns.value).includes('talk');
  return (
    <div class={isAboveLine ? 'notices above-line' : 'notices'} role="status">
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
