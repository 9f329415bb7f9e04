// The numbers of an entry as large fields; two that belong together (a pressure, a coma score) are changed together.

import { useState } from 'preact/hooks';
import type { Entry } from '../../record/index.ts';
import { type Changed, change, type Desk, restate } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { gcsWords, levelOf, type NumberField, pressureWords, pupilsOf } from './changes.ts';
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
    case 'level':
      return [[number.name, number.value]];
    case 'pupils':
      return [
        ['LEFT pupil, mm', number.left],
        ['RIGHT pupil, mm', number.right],
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
  const apply = () => tell(changeNumbers(desk, entry, number, texts.map(read)));
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

const MISSING: Changed = { kind: 'unchanged', why: 'a number is missing' };

/** The change that the fields ask for; `values` are theirs, in order. */
function changeNumbers(
  desk: Desk,
  entry: Entry,
  number: NumberField,
  [first = null, second = null, third = null]: readonly (number | null)[],
): Changed {
  if (first === null) return MISSING;
  switch (number.kind) {
    case 'single':
      return change(desk, entry.id, { change: 'number', value: first });
    case 'level':
      return changeLevel(desk, entry, levelOf(number.prefix, first));
    case 'pressure':
      return restate(desk, entry.id, 'vital', pressureWords(first, second));
    case 'pupils':
      return second === null ? MISSING : changePupils(desk, entry, first, second);
    case 'gcs':
      return second === null || third === null
        ? MISSING
        : restate(desk, entry.id, 'vital', gcsWords(first, second, third));
  }
}

function changeLevel(desk: Desk, entry: Entry, level: string | null): Changed {
  if (level === null) return { kind: 'unchanged', why: 'there is no such bone' };
  return entry.kind === 'finding'
    ? change(desk, entry.id, { change: 'site', site: entry.site, level })
    : MISSING;
}

function changePupils(desk: Desk, entry: Entry, left: number, right: number): Changed {
  if (entry.kind !== 'vital' || entry.vital !== 'pupils') return MISSING;
  // What a hand can set: 1 to 10 mm, as pupil gauges have them (common practice, no source).
  if ([left, right].some((size) => size < 1 || size > 10))
    return { kind: 'unchanged', why: 'a pupil is 1 to 10 mm wide' };
  const value = pupilsOf(entry.value, left, right);
  return change(desk, entry.id, {
    change: 'statement',
    statement: { kind: 'vital', vital: 'pupils', value },
  });
}
