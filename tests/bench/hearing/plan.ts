// What a whole run of the benchmark hears, in parts that may run beside each other, and the tables that they fill.

import type { PartAsked, PartDone } from './part.ts';
import { HEADINGS } from './sum.ts';
import { VOICES } from './voices.ts';

const WINDS = [null, 20, 10] as const;
const BUILT = { kind: 'both', lever: 'as built' } as const;
const ALL = Number.MAX_SAFE_INTEGER;

const inAll = (set: string, some: number): readonly PartAsked[] =>
  WINDS.flatMap((wind) => VOICES.map((voice) => ({ ...BUILT, set, voice, wind, some })));

const levers = (names: readonly string[], winds: readonly (number | null)[], some: number) =>
  names.flatMap((lever) =>
    winds.flatMap((wind) =>
      ['rms', 'slt'].map((voice) => ({ set: 'tuning', voice, wind, some, kind: 'exam', lever }) as const),
    ),
  );

/** Every table: its heading, what it tells, and its parts. */
export const TABLES: readonly {
  readonly title: string;
  readonly tells: string;
  readonly parts: readonly PartAsked[];
}[] = [
  { title: 'The report set, by voice and wind', tells: 'Every sentence of it.', parts: inAll('report', ALL) },
  {
    title: 'The tuning set, by voice and wind',
    tells: 'Sixty sentences and sixty ordinary ones, evenly from the whole.',
    parts: inAll('tuning', 60),
  },
  {
    title: 'By size of grammar',
    tells:
      'The sentences of the tuning set that say a vital sign, with the whole grammar and with that of vital signs alone.',
    parts: levers(['whole grammar, vital signs said', 'vital signs alone'], [null, 10], 40),
  },
  {
    title: 'By lever',
    tells: 'Thirty sentences of the tuning set, evenly from the whole, with one thing moved.',
    parts: levers(
      [
        'as built',
        'no second hearing',
        'no trust asked for',
        'no floor of noise',
        'no words in any order',
        'the model for telephones',
        'high-pass at 150 Hz',
        'high-pass at 300 Hz',
      ],
      [null, 10],
      30,
    ),
  },
  {
    title: 'Formant synthesis, apart',
    tells: 'espeak-ng, which makes formants that the model was never shown; forty of each.',
    parts: [{ ...BUILT, set: 'report', voice: 'espeak', wind: null, some: 40 }],
  },
];

const nameOf = ({ set, voice, wind, some, kind, lever }: PartAsked): string =>
  [set, voice, wind, some, kind, lever].join(' ');

/** The tables of what was heard; parts that were not are left out and said to be. */
export function tablesOf(done: readonly PartDone[]): string {
  const found = new Map(done.map((part) => [nameOf(part), part]));
  const memory = Math.max(0, ...done.map((part) => part.memory));
  const [names = '', line = ''] = HEADINGS.split('\n');
  const tables = TABLES.map(({ title, tells, parts }) => {
    const rows = parts.flatMap((part) => {
      const row = found.get(nameOf(part))?.row;
      return row === undefined ? [] : [`| ${part.lever} ${row}`];
    });
    const missing = rows.length < parts.length ? `\n\n${parts.length - rows.length} parts were not run.` : '';
    return `## ${title}\n\n${tells}\n\n| lever ${names}\n| --- ${line}\n${rows.join('\n')}${missing}\n`;
  });
  return `# Tables of the hearing\n\nWritten by \`npm run bench:hearing\`. Most compiled memory of a part, all decoders loaded: ${memory} MB.\n\n${tables.join('\n')}`;
}
