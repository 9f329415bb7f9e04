// Shows the page while it is open, and only the lock while it is locked: nothing of a record is left in the document.

import type { ComponentChildren } from 'preact';
import { useTools } from '../frame/tools.ts';
import { LockScreen } from './LockScreen.tsx';

export function Gate({ children }: { readonly children: ComponentChildren }) {
  const door = useTools().desk.door.now.value;
  return door.state === 'locked' ? <LockScreen hasPasskey={door.hasPasskey} /> : children;
}
