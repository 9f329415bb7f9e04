// Figures as they are said: "98" is "ninety eight", "120/80" is "one twenty over eighty", "36.5" is "thirty six point five".

import { inShort } from '../../parse/round-trip/spoken-number.ts';

/** The text with its figures in words. */
export const spokenNumbers = (text: string): string =>
  text
    .replace(/(\d+)\s*\/\s*(\d+)/g, '$1 over $2')
    .replace(/(\d+)\.(\d)/g, '$1 point $2')
    .replace(/(\d+)\s*%/g, '$1 percent')
    .replace(/\d+/g, (figures) => ` ${inShort(Number(figures))} `);
