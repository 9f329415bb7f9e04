// A body temperature in degrees Celsius to one decimal, Fahrenheit converted.

import { hasTag, type Island, numberOf, tagOf } from '../../islands/island.ts';
import { inRecordUnit, roundTo } from '../../units.ts';
import { BOUNDS, isWholeWithin, isWithin, type Read } from './vital-read.ts';

// Without a unit the number tells: no living patient has 80 degrees Celsius or 40 degrees Fahrenheit and is measured so.
const FAHRENHEIT_FROM = 70;

/** The temperature of an island. */
export function temperatureOf(island: Island): Read {
  const degrees = numberOf(island, 'degrees');
  const tenths = numberOf(island, 'tenths');
  if (degrees === null || (tenths !== null && !isWholeWithin(tenths, [0, 9]))) return null;
  // Two numbers, or one without a name ("ninety eight point six orally"), are one temperature only
  // where a body can have it: in Celsius, or in Fahrenheit.
  const likely = isWithin(degrees, [30, 43]) || isWithin(degrees, [86, 110]);
  if ((tenths !== null || hasTag(island, 'unnamed')) && !likely) return null;
  // "Thirty six five" is 36.5; the point was not said.
  const value = tenths === null ? degrees : roundTo(degrees + tenths / 10, 1);
  const said = tagOf(island, 'unit');
  const isFahrenheit = said === 'fahrenheit' || (said === null && value >= FAHRENHEIT_FROM);
  const converted = inRecordUnit({ value, unit: isFahrenheit ? 'fahrenheit' : 'celsius' });
  if (converted === null || !isWithin(converted.value, BOUNDS.celsius)) return null;
  return {
    reading: { vital: 'temperature', value: { celsius: roundTo(converted.value, 1) } },
    known: {
      ...(said === null ? { unit: 'inferred' as const } : {}),
      ...(tenths === null ? {} : { value: 'inferred' as const }),
    },
  };
}
