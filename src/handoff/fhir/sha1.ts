// SHA-1 of bytes, which version 5 UUIDs are defined by. It names things here and keeps no secret.

const START = [0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0] as const;

const turned = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/** The message followed by a one bit, zeros, and its length in bits, in whole blocks of 64 bytes. */
function padded(message: Uint8Array): DataView {
  const bytes = new Uint8Array(Math.ceil((message.length + 9) / 64) * 64);
  bytes.set(message);
  bytes[message.length] = 0x80;
  const view = new DataView(bytes.buffer);
  view.setUint32(bytes.length - 8, Math.floor(message.length / 2 ** 29));
  view.setUint32(bytes.length - 4, (message.length << 3) >>> 0);
  return view;
}

function schedule(blocks: DataView, block: number): Int32Array {
  const words = new Int32Array(80);
  for (let t = 0; t < 16; t += 1) words[t] = blocks.getInt32(block + t * 4);
  const word = (t: number): number => words[t] ?? 0;
  for (let t = 16; t < 80; t += 1)
    words[t] = turned(word(t - 3) ^ word(t - 8) ^ word(t - 14) ^ word(t - 16), 1);
  return words;
}

/** The function and the constant of step `t` (FIPS 180-4, 4.1.1 and 4.2.1). */
function mixed(t: number, b: number, c: number, d: number): number {
  if (t < 20) return ((b & c) ^ (~b & d)) + 0x5a827999;
  if (t < 40) return (b ^ c ^ d) + 0x6ed9eba1;
  return t < 60 ? ((b & c) ^ (b & d) ^ (c & d)) + 0x8f1bbcdc : (b ^ c ^ d) + 0xca62c1d6;
}

/** The 20 bytes of the digest. Source: FIPS 180-4, section 6.1 (from memory; the tests hold its published examples). */
export function sha1(message: Uint8Array): Uint8Array {
  const blocks = padded(message);
  let [h0, h1, h2, h3, h4]: [number, number, number, number, number] = [...START];
  for (let block = 0; block < blocks.byteLength; block += 64) {
    let [a, b, c, d, e] = [h0, h1, h2, h3, h4];
    for (const [t, word] of schedule(blocks, block).entries()) {
      const next = (turned(a, 5) + mixed(t, b, c, d) + e + word) | 0;
      [a, b, c, d, e] = [next, a, turned(b, 30), c, d];
    }
    [h0, h1, h2, h3, h4] = [(h0 + a) | 0, (h1 + b) | 0, (h2 + c) | 0, (h3 + d) | 0, (h4 + e) | 0];
  }
  const digest = new DataView(new ArrayBuffer(20));
  for (const [index, word] of [h0, h1, h2, h3, h4].entries()) digest.setInt32(index * 4, word);
  return new Uint8Array(digest.buffer);
}
