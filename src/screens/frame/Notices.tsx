// What the page has to say about itself: an update that waits, a record that could not be kept, the last thing done.

import { isUnderWay } from '../desk/index.ts';
import { DamageNotice } from '../records/DamageNotice.tsx';
import { FollowNotice } from '../records/FollowNotice.tsx';
import { useTools } from './tools.ts';

export function Notices() {
  const { desk, update } = useTools();
  const fault = desk.keeper.fault.value;
  const notice = desk.notice.value;
  const offer = update.waits.value && !isUnderWay(desk.record.value, desk.wall.value);
  return (
    <div class="notices" role="status">
      {fault !== null && <p class="notice trouble">{fault}</p>}
      <FollowNotice />
      <DamageNotice />
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
