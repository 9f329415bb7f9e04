// What the browser tells only when it is asked: whether the page is stored, the microphone, the screen, the battery.

import type { Facts } from './checks.ts';
import type { WakeState } from './wake.ts';

export type Asked = Pick<Facts, 'offline' | 'microphone' | 'battery'> & { readonly wakeTried: WakeState };

/** Nothing was asked yet. */
export const UNASKED: Asked = { offline: null, microphone: null, battery: null, wakeTried: 'off' };

export async function ask(): Promise<Asked> {
  const [offline, microphone, battery, wakeTried] = await Promise.all([
    isStored(),
    microphoneState(),
    batteryNow(),
    tryWake(),
  ]);
  return { offline, microphone, battery, wakeTried };
}

async function isStored(): Promise<boolean | null> {
  if (!('serviceWorker' in navigator)) return false;
  const worker = await navigator.serviceWorker.getRegistration();
  return (worker?.active ?? null) !== null;
}

async function microphoneState(): Promise<Facts['microphone']> {
  try {
    const { state } = await navigator.permissions.query({ name: 'microphone' as PermissionName });
    return state;
  } catch {
    return null;
  }
}

/** Asks the person for the microphone and lets go of it at once; true where it was given. */
export async function askForMicrophone(): Promise<boolean> {
  try {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
    for (const track of stream.getTracks()) track.stop();
    return true;
  } catch {
    return false;
  }
}

/** Keeps the screen on for an instant: whether the device allows it is known only by doing it. */
async function tryWake(): Promise<WakeState> {
  if (!('wakeLock' in navigator)) return 'none';
  try {
    const lock = await navigator.wakeLock.request('screen');
    await lock.release();
    return 'on';
  } catch {
    return 'refused';
  }
}

/** The Battery Status API, a W3C draft that Chromium alone has. */
interface BatteryManager {
  readonly level: number;
  readonly charging: boolean;
}

async function batteryNow(): Promise<Facts['battery']> {
  try {
    if (!('getBattery' in navigator)) return null;
    const { level, charging } = await (navigator.getBattery as () => Promise<BatteryManager>)();
    return { percent: Math.round(level * 100), charging };
  } catch {
    return null;
  }
}
