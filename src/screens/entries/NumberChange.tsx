// The numbers of an entry as large fields; two that belong together (a pressure, a coma score) are changed together.

import { useState } from 'preact/hooks';
import type { Entry } from '../../record/index.ts';
import { type Changed, change, restate } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { gcsWords, type NumberField, pressureWords } from './changes.ts';
import { Digits } from './Digits.tsx';

interface Props {
  readonly entry: Entry;
  readonly number: NumberField;
  readonly tell: (changed: Changed) => void;
}

const shown = (value: number | null): string => (value === null ? '' : String(value));
const read = (text: string): number | null => {
  const value = Number(text.replace(',', '.'));
  return text.trim() === '' || !Number.isFinite(value) ? null : value;
};

const fieldsOf = (number: NumberField): readonly (readonly [label: string, value: number | null])[] => {
  switch (number.kind) {
    case 'single':
      return [[`${number.label}${number.unit === '' ? '' : `, ${number.unit}`}`, number.value]];
    case 'pressure':
      return [
        ['Systolic', number.upper],
        ['Diastolic', number.lower],
      ];
    case 'gcs':
      return [
        ['Eyes', number.eye],
        ['Verbal', number.verbal],
        ['Motor', number.motor],
      ];
  }
};

export function NumberChange({ entry, number, tell }: Props) {
  const { desk } = useTools();
  const fields = fieldsOf(number);
  const [texts, setTexts] = useState<readonly string[]>(fields.map(([, value]) => shown(value)));
  const apply = () => {
    const [first, second, third] = texts.map(read);
    if (number.kind === 'single') {
      if (first === null || first === undefined)
        return tell({ kind: 'unchanged', why: 'no number is there' });
      return tell(change(desk, entry.id, { change: 'number', value: first }));
    }
    if (first === null || first === undefined) return tell({ kind: 'unchanged', why: 'a number is missing' });
    if (number.kind === 'pressure') {
      return tell(restate(desk, entry.id, 'vital', pressureWords(first, second ?? null)));
    }
    if (typeof second !== 'number' || typeof third !== 'number')
      return tell({ kind: 'unchanged', why: 'a number is missing' });
    return tell(restate(desk, entry.id, 'vital', gcsWords(first, second, third)));
  };
  return (
    <fieldset>
      <legend>Number</legend>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          apply();
        }}
      >
        <div class="numbers">
          {fields.map(([label], index) => (
            <Digits
              key={label}
              label={label}
              text={texts[index] ?? ''}
              type={(text) => setTexts(texts.map((before, at) => (at === index ? text : before)))}
            />
          ))}
        </div>
        <button type="submit" class="button big wide">
          Change the number
        </button>
      </form>
    </fieldset>
  );
}
