// Whether the browser can recognise without sending the sound away; where it could after a download, it is asked to.

import type { RecognitionMaker } from './recognition.ts';

/** `downloadable`: after a download that the browser does when it is asked. */
export type OnDevice = 'available' | 'downloadable' | 'no';

export async function onDevice(maker: RecognitionMaker, lang: string): Promise<OnDevice> {
  if (!('processLocally' in maker.prototype) || maker.available === undefined) return 'no';
  try {
    const state = await maker.available({ langs: [lang], processLocally: true });
    if (state === 'available') return 'available';
    return state === 'downloadable' || state === 'downloading' ? 'downloadable' : 'no';
  } catch {
    return 'no';
  }
}

/** Asks the browser to fetch what it needs; true where it can recognise on the device now. */
export async function installOnDevice(maker: RecognitionMaker, lang: string): Promise<boolean> {
  try {
    return (await maker.install?.({ langs: [lang], processLocally: true })) === true;
  } catch {
    return false;
  }
}
