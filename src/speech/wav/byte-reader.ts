// Bytes that arrive in pieces of any length, taken in the lengths that a format asks for; holds one piece at a time.

export interface ByteReader {
  /** the next `length` bytes, or all that are left where fewer come */
  take(length: number): Promise<Uint8Array>;
  /** up to `length` bytes, as many as are at hand; empty only at the end */
  takeSome(length: number): Promise<Uint8Array>;
  /** goes past `length` bytes; answers how many were there to go past */
  skip(length: number): Promise<number>;
}

export function byteReader(pieces: AsyncIterable<Uint8Array>): ByteReader {
  const source = pieces[Symbol.asyncIterator]();
  let rest: Uint8Array = new Uint8Array(0);

  async function fill(): Promise<boolean> {
    while (rest.length === 0) {
      const next = await source.next();
      if (next.done === true) return false;
      rest = next.value;
    }
    return true;
  }

  async function takeSome(length: number): Promise<Uint8Array> {
    if (!(await fill())) return rest;
    const some = rest.subarray(0, length);
    rest = rest.subarray(some.length);
    return some;
  }

  async function take(length: number): Promise<Uint8Array> {
    const first = await takeSome(length);
    if (first.length === length || first.length === 0) return first;
    const whole = new Uint8Array(length);
    whole.set(first);
    let at = first.length;
    while (at < length) {
      const more = await takeSome(length - at);
      if (more.length === 0) break;
      whole.set(more, at);
      at += more.length;
    }
    return whole.subarray(0, at);
  }

  async function skip(length: number): Promise<number> {
    let gone = 0;
    while (gone < length) {
      const some = await takeSome(length - gone);
      if (some.length === 0) break;
      gone += some.length;
    }
    return gone;
  }

  return { take, takeSome, skip };
}
