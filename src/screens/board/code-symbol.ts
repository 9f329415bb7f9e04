// Draws the code to join as a QR symbol, black on white whatever the board's look.

import { encodeQR } from 'qr';
import { drawSymbol } from '../qr/symbol.ts';

/** Squares of white around a symbol; ISO/IEC 18004 asks for four. */
const QUIET = 4;

export const drawCode = (canvas: HTMLCanvasElement, text: string): void =>
  drawSymbol(canvas, encodeQR(text, 'raw', { ecc: 'medium', border: QUIET }), window.devicePixelRatio);
