// One reading of a vital in figures and plain words: only what was said, no unit left out, never a letter for a side.

import type { GcsPart, VitalReading } from '../terms/index.ts';

type Of<V extends VitalReading['vital']> = Extract<VitalReading, { vital: V }>['value'];

const joined = (words: readonly (string | undefined)[]): string =>
  words.filter((word): word is string => word !== undefined && word !== '').join(', ');

const yesOrNo = (said: boolean | undefined, word: string): string | undefined =>
  said === undefined ? undefined : said ? word : `NOT ${word}`;

const pressure = ({ systolic, diastolic, method }: Of<'blood-pressure'>): string =>
  diastolic === null
    ? `${systolic}${method === 'palpation' ? ' by palpation' : ', lower value not said'}`
    : `${systolic}/${diastolic}${method === 'palpation' ? ' by palpation' : ''}`;

const saturation = ({ percent, onOxygen }: Of<'oxygen-saturation'>): string =>
  `${percent}%${onOxygen === undefined ? '' : onOxygen ? ' on oxygen' : ' without oxygen'}`;

const pupils = (value: Of<'pupils'>): string =>
  joined([
    yesOrNo(value.equal, 'equal'),
    yesOrNo(value.round, 'round'),
    yesOrNo(value.reactive, 'reactive'),
    value.leftMm === undefined ? undefined : `left ${value.leftMm} mm`,
    value.rightMm === undefined ? undefined : `right ${value.rightMm} mm`,
    value.leftReactive === undefined ? undefined : `left ${yesOrNo(value.leftReactive, 'reactive')}`,
    value.rightReactive === undefined ? undefined : `right ${yesOrNo(value.rightReactive, 'reactive')}`,
    ...(value.quality ?? []),
  ]);

const AVPU = {
  A: 'alert',
  V: 'responds to voice',
  P: 'responds to pain',
  U: 'unresponsive',
} as const;

const responsiveness = ({ avpu, orientation }: Of<'responsiveness'>): string =>
  joined([
    avpu === undefined ? undefined : AVPU[avpu],
    orientation === undefined ? undefined : `oriented times ${orientation}`,
  ]);

const gcsPart = (letter: string, part: GcsPart | undefined): string | undefined =>
  part === undefined ? undefined : part === 'NT' ? `${letter} not testable` : `${letter}${part}`;

/** Components before the sum, as the 2014 wording of the scale asks (Teasdale 2014; from memory). */
const gcs = ({ eye, verbal, motor, total }: Of<'gcs'>): string =>
  joined([
    gcsPart('E', eye),
    gcsPart('V', verbal),
    gcsPart('M', motor),
    total !== undefined ? `total ${total}` : [eye, verbal, motor].includes('NT') ? 'no total' : undefined,
  ]);

const rate = ({ rate: number, quality }: Of<'pulse' | 'respirations'>): string =>
  joined([number === undefined ? undefined : `${number}`, ...(quality ?? [])]);

/** `118/76`, `96% on oxygen`, `E3, V4, M6, total 13`: the value alone, without the vital's name. */
export function readingText(reading: VitalReading): string {
  switch (reading.vital) {
    case 'pulse':
    case 'respirations':
      return rate(reading.value);
    case 'blood-pressure':
      return pressure(reading.value);
    case 'oxygen-saturation':
      return saturation(reading.value);
    case 'temperature':
      return `${reading.value.celsius.toFixed(1)} °C`;
    case 'glucose':
      return `${reading.value.mgPerDl} mg/dL`;
    case 'skin':
      return joined([reading.value.color, reading.value.temperature, reading.value.moisture]);
    case 'pupils':
      return pupils(reading.value);
    case 'responsiveness':
      return responsiveness(reading.value);
    case 'gcs':
      return gcs(reading.value);
    case 'pain-score':
      return `${reading.value.score} out of 10`;
    case 'capillary-refill':
      return `${reading.value.seconds} seconds`;
  }
}
