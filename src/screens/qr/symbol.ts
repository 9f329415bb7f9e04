// A frame's text as the squares of a QR symbol, drawn so that every square is whole pixels.

import { encodeQR } from 'qr';

/** Squares of white around a symbol; ISO/IEC 18004 asks for four. */
const QUIET = 4;

/** Rows of squares, true for dark, with the white around. */
export const squaresOf = (text: string): readonly (readonly boolean[])[] =>
  encodeQR(text, 'raw', { ecc: 'medium', encoding: 'alphanumeric', border: QUIET });

/** Draws the squares as large as fit the canvas's box; black on white whatever the page's look. */
export function drawSymbol(
  canvas: HTMLCanvasElement,
  squares: readonly (readonly boolean[])[],
  pixelRatio: number,
): void {
  const count = squares.length;
  const size = Math.max(1, Math.floor((canvas.clientWidth * pixelRatio) / count));
  canvas.width = size * count;
  canvas.height = size * count;
  const pen = canvas.getContext('2d');
  if (pen === null) return;
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.fillStyle = '#000';
  for (const [y, row] of squares.entries())
    for (const [x, dark] of row.entries()) if (dark) pen.fillRect(x * size, y * size, size, size);
}
