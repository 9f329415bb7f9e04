// Burns told in palms of the patient's hand, or in percent.

import type { Source } from '../source.ts';
import { NUMBER, numberIn } from '../told/number.ts';

export const PALM_SOURCE: Source = {
  cite: 'palm with fingers about 1 % (0.78 % measured; tends to 10 to 20 % too much): Murari A, Singh KN. Acute Crit Care 2019;34:276-281',
  mark: 'read',
};

/** Percent of the body surface for one palm with its fingers, the working rule. */
export const PALM_PERCENT = 1;

const PALMS = new RegExp(`(${NUMBER}|half a)[\\s-]*(?:palms?|palm[\\s-]?prints?|hand[\\s-]?prints?)\\b`, 'i');
const PERCENT = new RegExp(`(${NUMBER})\\s*(?:percent|per cent|%)`, 'i');

/** Percent of the body surface that the words give in palms or percent; null where they give neither. */
export function palmPercentIn(text: string): number | null {
  const palms = PALMS.exec(text);
  if (palms !== null) {
    const said = (palms[1] ?? '').toLowerCase();
    const count = said === 'half a' ? 0.5 : numberIn(said);
    return count === null ? null : count * PALM_PERCENT;
  }
  const percent = PERCENT.exec(text);
  return percent === null ? null : numberIn(percent[1] ?? '');
}
