// Says that another page records, and offers to record here instead.

import { useTools } from '../frame/tools.ts';

export function FollowNotice() {
  const { desk, pages } = useTools();
  if (desk.role.value !== 'follows') return null;
  return (
    <p class="notice">
      <span>
        <b>This page follows</b> another one that records. What is said here waits.
      </span>{' '}
      <button type="button" class="button" onClick={() => pages.value?.takeOver()}>
        Record here
      </button>
    </p>
  );
}
