// A text as few bytes and back (DEFLATE, RFC 1951); what would swell beyond every record is refused, not followed.

import { type Bytes, utf8 } from '../bytes.ts';

/** A log this large is no examination's: an altered file could otherwise fill the device. */
const MOST = 64_000_000;

async function through(bytes: Bytes, change: GenericTransformStream): Promise<Bytes> {
  const stream = new Blob([bytes]).stream().pipeThrough(change as ReadableWritablePair<Bytes, Bytes>);
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

export const squeeze = (text: string): Promise<Bytes> =>
  through(utf8(text), new CompressionStream('deflate-raw'));

/** The text; null where the bytes are no squeezed text, or one that is too long. */
export async function unsqueeze(bytes: Bytes): Promise<string | null> {
  try {
    const inflated = await through(bytes, limited(MOST));
    return new TextDecoder('utf-8', { fatal: true }).decode(inflated);
  } catch {
    return null;
  }
}

/** Inflates up to a number of bytes, and fails beyond. */
function limited(most: number): GenericTransformStream {
  const inflate = new DecompressionStream('deflate-raw');
  let length = 0;
  const count = new TransformStream<Uint8Array, Uint8Array>({
    transform: (piece, controller) => {
      length += piece.length;
      if (length > most) controller.error(new Error('too large'));
      else controller.enqueue(piece);
    },
  });
  return { writable: inflate.writable, readable: inflate.readable.pipeThrough(count) };
}
