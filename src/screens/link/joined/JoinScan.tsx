// Looks with the camera for a code to join; other symbols in view are said and passed over.

import { useEffect, useRef, useState } from 'preact/hooks';
import { openCamera } from '../../qr/camera.ts';
import { createDetector } from '../../qr/detector.ts';

/** Between two looks at the picture, ms. */
const PAUSE = 100;

export function JoinScan({ found }: { readonly found: (text: string) => boolean }) {
  const video = useRef<HTMLVideoElement>(null);
  const [on, setOn] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const take = useRef(found);
  take.current = found;
  useEffect(() => {
    if (!on) return;
    let stream: MediaStream | null = null;
    let over = false;
    const look = async () => {
      const [camera, detector] = await Promise.all([openCamera(), createDetector().catch(() => null)]);
      if (camera.kind === 'camera') stream = camera.stream;
      if (camera.kind === 'none' || detector === null || over) {
        if (camera.kind === 'none') setTrouble(camera.why);
        else if (detector === null)
          setTrouble('The part of the page that reads symbols could not be loaded.');
        for (const track of stream?.getTracks() ?? []) track.stop();
        setOn(false);
        return;
      }
      const picture = video.current;
      if (picture === null) return;
      picture.srcObject = camera.stream;
      await picture.play().catch(() => undefined);
      while (!over) {
        const symbols = picture.readyState < 2 ? [] : await detector.detect(picture).catch(() => []);
        if (symbols.some(({ rawValue }) => !over && take.current(rawValue))) return;
        await new Promise((go) => setTimeout(go, PAUSE));
      }
    };
    void look();
    return () => {
      over = true;
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
  }, [on]);
  return (
    <>
      {on ? (
        <video ref={video} class="join-view" muted playsInline aria-label="What the camera sees" />
      ) : (
        <button
          type="button"
          class="button primary wide"
          onClick={() => {
            setTrouble(null);
            setOn(true);
          }}
        >
          Scan the code
        </button>
      )}
      {trouble !== null && (
        <p class="notice trouble" role="alert">
          {trouble}
        </p>
      )}
    </>
  );
}
