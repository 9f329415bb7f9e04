// Signs without a number: what was worst between the first and the last is told; the entries are invented.

import { describe, expect, test } from 'vitest';
import { mist, radio, sbar, soap, textOf } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import type { VitalReading } from '../../src/terms/index.ts';
import { input, made } from './made-up.ts';

const at = (time: string, reading: VitalReading): Entry =>
  made(`${reading.vital}${time}`, { kind: 'vital', ...reading }, { time });
const equal = (time: string) => at(time, { vital: 'pupils', value: { equal: true, reactive: true } });
const awake = (time: string, avpu: 'A' | 'V' | 'P' | 'U') =>
  at(time, { vital: 'responsiveness', value: { avpu } });
const pink = (time: string) => at(time, { vital: 'skin', value: { color: 'pink', moisture: 'dry' } });

const onAir = (entries: readonly Entry[]): string =>
  radio(input(entries))
    .chunks.map(({ text }) => text)
    .join('\n');

describe('a sign without a number', () => {
  const rows: readonly (readonly [string, readonly Entry[], RegExp])[] = [
    [
      'a blown pupil between two equal ones',
      [
        equal('14:06'),
        at('14:14', { vital: 'pupils', value: { leftMm: 7, leftReactive: false } }),
        equal('14:22'),
      ],
      /left 7 mm, left NOT reactive at 14:14/,
    ],
    [
      'unresponsive between two alert ones',
      [awake('14:06', 'A'), awake('14:14', 'U'), awake('14:22', 'A')],
      /unresponsive at 14:14/,
    ],
    [
      'ashen skin between two pink ones',
      [
        pink('14:06'),
        at('14:14', { vital: 'skin', value: { color: 'ashen', moisture: 'clammy' } }),
        pink('14:22'),
      ],
      /ashen, clammy at 14:14/,
    ],
    [
      'one of five in a note that tells long series in short',
      [
        awake('14:06', 'A'),
        awake('14:10', 'V'),
        awake('14:14', 'P'),
        awake('14:18', 'V'),
        awake('14:22', 'A'),
        awake('14:26', 'A'),
      ],
      /responds to pain at 14:14/,
    ],
    [
      'breathing that was told without its rate',
      [
        at('14:06', { vital: 'respirations', value: { rate: 16 } }),
        at('14:14', { vital: 'respirations', value: { quality: ['gasping'] } }),
        at('14:22', { vital: 'respirations', value: { rate: 18 } }),
      ],
      /gasping at 14:14/,
    ],
  ];
  test.each(rows)('is told of in MIST, SBAR and SOAP: %s', (_, entries, line) => {
    for (const report of [mist, sbar, soap]) expect(textOf(report(input(entries)))).toMatch(line);
  });

  test('that stayed as it was is told by the first and the last', () => {
    expect(textOf(mist(input([equal('14:06'), equal('14:14'), equal('14:22')])))).toContain(
      'Pupils, 3 readings: first equal, reactive at 14:06; last equal, reactive at 14:22',
    );
  });
});

describe('the worst response on the radio', () => {
  test('is told beside the last', () => {
    const said = onAir([awake('14:06', 'A'), awake('14:14', 'P'), awake('14:22', 'A')]);
    expect(said).toMatch(/Alert\. Worst: responds to pain at one four one four/);
  });
  test('is not told where the last is no better', () => {
    expect(onAir([awake('14:06', 'A'), awake('14:14', 'P')])).not.toContain('Worst');
    expect(onAir([awake('14:06', 'P'), awake('14:14', 'P')])).not.toContain('Worst');
  });
});
