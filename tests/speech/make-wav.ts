// Writes WAV recordings for tests from numbers: tones and noise of our own making, in every format that is read.

export interface Making {
  readonly rate: number;
  readonly channels?: number;
  readonly bits?: number;
  readonly float?: boolean;
  readonly extensible?: boolean;
  /** what the data chunk's header says, where it is not the truth */
  readonly saidLength?: number;
  /** bytes of a chunk that stands before the sound */
  readonly noteBytes?: number;
}

/** `seconds` of a sine of `hertz` at half of full scale. */
export const tone = (hertz: number, seconds: number, rate: number): Float32Array =>
  Float32Array.from(
    { length: Math.round(seconds * rate) },
    (_, i) => 0.5 * Math.sin((2 * Math.PI * hertz * i) / rate),
  );

function chunk(name: string, content: Uint8Array, length = content.length): Uint8Array {
  const made = new Uint8Array(8 + content.length + (content.length % 2));
  made.set(new TextEncoder().encode(name));
  new DataView(made.buffer).setUint32(4, length, true);
  made.set(content, 8);
  return made;
}

function formatOf({ rate, channels = 1, bits = 16, float = false, extensible = false }: Making): Uint8Array {
  const made = new Uint8Array(extensible ? 40 : 16);
  const view = new DataView(made.buffer);
  const frame = (channels * bits) / 8;
  const code = float ? 3 : 1;
  view.setUint16(0, extensible ? 0xfffe : code, true);
  view.setUint16(2, channels, true);
  view.setUint32(4, rate, true);
  view.setUint32(8, rate * frame, true);
  view.setUint16(12, frame, true);
  view.setUint16(14, bits, true);
  if (extensible) {
    view.setUint16(16, 22, true);
    view.setUint16(18, bits, true);
    view.setUint16(24, code, true);
    made.set([0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xaa, 0, 0x38, 0x9b, 0x71], 26);
  }
  return made;
}

function put(view: DataView, at: number, value: number, bits: number, float: boolean): void {
  const whole = (scale: number) => Math.max(-scale, Math.min(scale - 1, Math.round(value * scale)));
  if (float) view.setFloat32(at, value, true);
  else if (bits === 8) view.setUint8(at, whole(128) + 128);
  else if (bits === 16) view.setInt16(at, whole(32_768), true);
  else if (bits === 24) {
    const number = whole(8_388_608);
    view.setUint8(at, number & 0xff);
    view.setInt16(at + 1, number >> 8, true);
  } else view.setInt32(at, whole(2_147_483_648), true);
}

/** The file's bytes; `channelsOf` are the samples of each channel, all of one length. */
export function makeWav(channelsOf: readonly Float32Array[], making: Making): Uint8Array {
  const { bits = 16, float = false, saidLength, noteBytes } = making;
  const frames = channelsOf[0]?.length ?? 0;
  const step = bits / 8;
  const data = new Uint8Array(frames * channelsOf.length * step);
  const view = new DataView(data.buffer);
  for (let frame = 0; frame < frames; frame++)
    channelsOf.forEach((channel, number) => {
      put(view, (frame * channelsOf.length + number) * step, channel[frame] ?? 0, bits, float);
    });
  const parts = [
    chunk('fmt ', formatOf({ ...making, channels: channelsOf.length })),
    ...(noteBytes === undefined ? [] : [chunk('LIST', new Uint8Array(noteBytes))]),
    chunk('data', data, saidLength),
  ];
  const body = Buffer.concat([new TextEncoder().encode('WAVE'), ...parts]);
  return chunk('RIFF', body);
}

/** The bytes in pieces of `size`, as a slow disk or a pipe would give them. */
export async function* inPieces(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}
