// A film of grey pictures for the browser's make-believe camera: YUV4MPEG2, with four bytes of colour plane left neutral.

/** Pictures as rows of brightness, 0 black to 255 white, all of one size (even width and height). */
export function filmOf(pictures: readonly Uint8Array[], width: number, height: number, rate: number): Buffer {
  const head = Buffer.from(`YUV4MPEG2 W${width} H${height} F${rate}:1 Ip A1:1 C420jpeg\n`, 'ascii');
  const colour = Buffer.alloc((width * height) / 2, 128);
  return Buffer.concat([
    head,
    ...pictures.flatMap((picture) => [Buffer.from('FRAME\n', 'ascii'), Buffer.from(picture), colour]),
  ]);
}

/** Squares (true is dark) as a picture of `side` pixels a side, with white around. */
export function pictureOf(squares: readonly (readonly boolean[])[], side: number): Uint8Array {
  const picture = new Uint8Array(side * side).fill(255);
  const size = Math.floor(side / squares.length);
  const edge = Math.floor((side - size * squares.length) / 2);
  for (const [y, row] of squares.entries())
    for (const [x, dark] of row.entries())
      if (dark)
        for (let line = 0; line < size; line += 1) {
          const from = (edge + y * size + line) * side + edge + x * size;
          picture.fill(0, from, from + size);
        }
  return picture;
}
