// Opens the microphone and leads its sound to whoever holds the other end of the port, past the page's own thread.

import type { SoundLevel } from './loudness.ts';
import { type Refusal, refusalOf } from './refusal.ts';

export interface Microphone {
  readonly kind: 'open';
  /** what the device calls it, or nothing */
  readonly name: string;
  /** samples a second */
  readonly rate: number;
  /** blocks of sound come out of it (`SoundBlock`) */
  readonly port: MessagePort;
  /** asks the device to go on, where it paused the sound by itself */
  wake(): void;
  close(): void;
}

/** What befalls an open microphone; none of it is called after `close`. */
export interface MicrophoneNews {
  /** it is gone for good: unplugged, or no longer allowed */
  lost(): void;
  /** another app or the device took its sound, or gave it back */
  muted(isMuted: boolean): void;
  /** the device paused the page's sound, or let it go on */
  paused(isPaused: boolean): void;
  /** sound arrived, and how it is; some eight times a second */
  level(level: SoundLevel): void;
}

export interface MicrophoneParts {
  /** undefined where the browser gives a page no devices */
  readonly devices: Pick<MediaDevices, 'getUserMedia'> | undefined;
  readonly makeContext: () => AudioContext;
  /** address of the script that taps the sound */
  readonly tap: string;
}

/**
 * What is asked of the device. The recogniser was made for plain sound: gates that cut what they take for noise cut
 * consonants too. The echo of the page's own voice is kept out by being deaf while it speaks. Automatic gain
 * changes in the middle of the first words: with it Chromium lost the first line of a spoken examination in three runs
 * of three, and without it in none of one (tests/browser/hearing.test.ts).
 */
const WANTED: MediaTrackConstraints = {
  channelCount: 1,
  echoCancellation: false,
  noiseSuppression: false,
  autoGainControl: false,
};

const nameOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';

/** Opens it; the browser asks the person where it has not asked yet. */
export async function openMicrophone(
  { devices, makeContext, tap }: MicrophoneParts,
  news: MicrophoneNews,
): Promise<Microphone | Refusal> {
  if (devices === undefined) return refusalOf('TypeError');
  let stream: MediaStream;
  try {
    stream = await devices.getUserMedia({ audio: WANTED });
  } catch (error) {
    return refusalOf(nameOf(error));
  }
  const context = makeContext();
  const stop = (): void => {
    for (const track of stream.getTracks()) track.stop();
    void context.close();
  };
  try {
    await context.audioWorklet.addModule(tap);
    await context.resume();
  } catch (error) {
    stop();
    return refusalOf(nameOf(error));
  }
  return connected(context, stream, news, stop);
}

function connected(
  context: AudioContext,
  stream: MediaStream,
  news: MicrophoneNews,
  stop: () => void,
): Microphone {
  // A node that leads nowhere is not run by every browser; what comes out of it is silence.
  const node = new AudioWorkletNode(context, 'tap', { numberOfInputs: 1, numberOfOutputs: 1 });
  const source = context.createMediaStreamSource(stream);
  source.connect(node).connect(context.destination);
  const { port1, port2 } = new MessageChannel();
  node.port.postMessage(port1, [port1]);
  const [track] = stream.getAudioTracks();
  let open = true;
  const tell = (what: () => void) => (): void => {
    if (open) what();
  };
  node.port.onmessage = ({ data }: MessageEvent<SoundLevel>) => {
    if (!open) return;
    // Not every end is told by an event: one that a script or a sleeping device brought about gives zeros from then on.
    if (track?.readyState === 'ended') news.lost();
    else news.level(data);
  };
  track?.addEventListener('ended', tell(news.lost));
  track?.addEventListener(
    'mute',
    tell(() => news.muted(true)),
  );
  track?.addEventListener(
    'unmute',
    tell(() => news.muted(false)),
  );
  context.addEventListener(
    'statechange',
    tell(() => news.paused(context.state !== 'running')),
  );
  if (track?.muted === true) news.muted(true);
  return {
    kind: 'open',
    name: track?.label ?? '',
    rate: context.sampleRate,
    port: port2,
    wake: () => void context.resume().catch(() => undefined),
    close: () => {
      open = false;
      source.disconnect();
      stop();
    },
  };
}
