// Locks the page at a press, from anywhere, once there is a passphrase.

import { useTools } from '../frame/tools.ts';
import { lockPage } from './lock.ts';

export function LockButton() {
  const tools = useTools();
  const door = tools.desk.door.now.value;
  if (door.state !== 'open' || door.by === 'device') return null;
  return (
    <button type="button" class="button small" onClick={() => void lockPage(tools)}>
      Lock
    </button>
  );
}
