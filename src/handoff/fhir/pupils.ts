// Pupils, each thing that was said of them as a component with its side in the code.

import type { VitalReading } from '../../terms/index.ts';
import { own, quantity } from './concept.ts';
import { EXAM, onlyComponents, qualities, type Said } from './observation.ts';
import type { Component } from './shapes.ts';

type Pupils = Extract<VitalReading, { vital: 'pupils' }>['value'];

const YES_NO = [
  ['equal', 'pupils-equal'],
  ['round', 'pupils-round'],
  ['reactive', 'pupils-reactive'],
  ['leftReactive', 'left-pupil-reactive'],
  ['rightReactive', 'right-pupil-reactive'],
] as const satisfies readonly (readonly [keyof Pupils, string])[];

const SIZES = [
  ['leftMm', 'left-pupil-size'],
  ['rightMm', 'right-pupil-size'],
] as const satisfies readonly (readonly [keyof Pupils, string])[];

export function pupils(value: Pupils): Said {
  const answers = YES_NO.flatMap(([slot, code]): readonly Component[] => {
    const valueBoolean = value[slot];
    return valueBoolean === undefined ? [] : [{ code: own('attribute', code), valueBoolean }];
  });
  const sizes = SIZES.flatMap(([slot, code]): readonly Component[] => {
    const size = value[slot];
    return size === undefined
      ? []
      : [{ code: own('attribute', code), valueQuantity: quantity(size, 'mm', 'mm') }];
  });
  return {
    category: EXAM,
    code: own('sign', 'pupils'),
    ...onlyComponents([...answers, ...sizes, ...qualities(value.quality)]),
  };
}
