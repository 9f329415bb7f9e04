// The camera's picture with what has come and what is missing; frames of another record are noticed and not mixed in.

import { useEffect, useRef, useState } from 'preact/hooks';
import { type Collection, missingParts, partsInWords, takeFrame } from '../../handoff/index.ts';
import { openCamera } from './camera.ts';
import { createDetector } from './detector.ts';

/** Between two looks at the picture, ms. */
const PAUSE = 60;
/** Missing parts that are named; more are counted. */
const NAMED = 40;

interface Props {
  readonly whole: (collection: Collection) => void;
  readonly file: (text: string) => void;
}

export function Scan({ whole, file }: Props) {
  const video = useRef<HTMLVideoElement>(null);
  const chooser = useRef<HTMLInputElement>(null);
  const [on, setOn] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [remark, setRemark] = useState('');
  const [collection, setCollection] = useState<Collection | null>(null);
  const got = useRef<Collection | null>(null);
  const finish = useRef(whole);
  finish.current = whole;

  const take = (text: string): boolean => {
    const taken = takeFrame(got.current, text);
    if (taken.kind === 'other')
      setRemark('Symbols of another record are in view. Begin anew to take that one.');
    else if (taken.kind === 'foreign') setRemark('A QR symbol is in view that is none of these.');
    else if (taken.kind === 'damaged') setRemark(`A symbol was not taken: ${taken.why}.`);
    else setRemark('');
    if (taken.kind !== 'new') return false;
    got.current = taken.collection;
    setCollection(taken.collection);
    if (missingParts(taken.collection).length > 0) return false;
    finish.current(taken.collection);
    return true;
  };

  useEffect(() => {
    if (!on) return;
    let stream: MediaStream | null = null;
    let over = false;
    const look = async () => {
      const [camera, detector] = await Promise.all([openCamera(), createDetector().catch(() => null)]);
      if (camera.kind === 'camera') stream = camera.stream;
      if (camera.kind === 'none' || detector === null || over) {
        setTrouble(
          camera.kind === 'none'
            ? camera.why
            : 'The part of the page that reads symbols could not be loaded.',
        );
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
        if (symbols.some(({ rawValue }) => !over && take(rawValue))) return;
        await new Promise((go) => setTimeout(go, PAUSE));
      }
    };
    void look();
    return () => {
      over = true;
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
  }, [on]);

  const again = () => {
    got.current = null;
    setCollection(null);
    setRemark('');
  };
  const choose = async (chosen: File | undefined) => {
    if (chosen === undefined) return;
    try {
      file(await chosen.text());
    } catch {
      setTrouble('The file could not be read.');
    }
  };
  return (
    <section class="scan" aria-label="Scan">
      {on ? (
        <video ref={video} class="view" muted playsInline aria-label="What the camera sees" />
      ) : (
        <button
          type="button"
          class="button primary wide"
          onClick={() => {
            setTrouble(null);
            setOn(true);
          }}
        >
          Look with the camera
        </button>
      )}
      {trouble !== null && (
        <p class="notice trouble" role="alert">
          {trouble}
        </p>
      )}
      {collection !== null && <Progress collection={collection} />}
      <p class="small-print" role="status">
        {remark}
      </p>
      {collection !== null && (
        <button type="button" class="button wide" onClick={again}>
          Begin anew
        </button>
      )}
      <button type="button" class="button big wide" onClick={() => chooser.current?.click()}>
        Or choose a file
      </button>
      <input
        ref={chooser}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label="A file that was saved or shared"
        onChange={(event) => void choose(event.currentTarget.files?.[0])}
      />
    </section>
  );
}

function Progress({ collection }: { readonly collection: Collection }) {
  const missing = missingParts(collection);
  const count = collection.of - missing.length;
  return (
    <div class="received-parts">
      <progress max={collection.of} value={count} aria-label="Parts received" />
      <p>
        <b>
          {count} of {collection.of} parts
        </b>
        {missing.length > 0 &&
          (missing.length <= NAMED
            ? `. Missing: ${partsInWords(missing)}`
            : `. ${missing.length} are missing`)}
      </p>
    </div>
  );
}
