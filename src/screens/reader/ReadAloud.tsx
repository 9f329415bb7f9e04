// The device reads the piece aloud itself, held to the radio's microphone; only by a voice that is on the device.

import { useEffect, useRef, useState } from 'preact/hooks';
import { useTools } from '../frame/tools.ts';
import { shortLines } from './short-lines.ts';

/** Words a minute of a device's voice at its own rate; about what people speak, no source. */
const VOICE_PACE = 160;
/** The bounds of what stays intelligible; our choice. */
const RATES = { least: 0.5, most: 1 } as const;

interface Props {
  readonly text: string;
  /** words a minute */
  readonly pace: number;
  /** the voice has come to its end */
  readonly said: () => void;
}

export function ReadAloud({ text, pace, said }: Props) {
  const { speaker } = useTools();
  const [begun, setBegun] = useState(false);
  const told = useRef(said);
  told.current = said;
  useEffect(() => {
    if (!begun) return;
    // The speaker guards against a voice that never ends: it goes on by itself after a while.
    return speaker.speaking.subscribe((speaking) => {
      if (!speaking) {
        setBegun(false);
        told.current();
      }
    });
  }, [begun, speaker]);
  if (speaker.voice.value !== 'local')
    return <p class="small-print">No voice on this device can read it aloud: read it yourself.</p>;
  const rate = Math.min(RATES.most, Math.max(RATES.least, pace / VOICE_PACE));
  const begin = () => {
    for (const line of shortLines(text)) speaker.speak(line, rate);
    setBegun(true);
  };
  const stop = () => {
    setBegun(false);
    speaker.hush();
  };
  return (
    <button type="button" class="button wide" onClick={begun ? stop : begin}>
      {begun ? 'Stop reading aloud' : 'Let the device read it aloud'}
    </button>
  );
}
