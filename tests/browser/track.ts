// The microphone's track kept at hand in the page, so that what befalls one on a phone can be played.

import type { Page } from 'playwright-core';

/** Must run before the page is opened. */
export const keepTrack = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = async (wanted) => {
      const stream = await ask(wanted);
      Object.assign(window, { track: stream.getAudioTracks()[0] });
      return stream;
    };
  });

/** Another app takes the microphone, or gives it back. */
export const befall = (page: Page, kind: 'mute' | 'unmute'): Promise<void> =>
  page.evaluate((name) => {
    (window as unknown as { track: MediaStreamTrack }).track.dispatchEvent(new Event(name));
  }, kind);
