// Care in few words: by its name and place, and with its time where the next step goes by it.

import { careName, clock, type Day, inOrder } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { type CareEntry, caresTold, careText } from '../sentences/care.ts';
import { endOf, endWord } from '../sentences/care-ended.ts';
import { capital } from '../sentences/list.ts';
import { thePlace } from '../sentences/place.ts';
import type { Told } from '../sentences/told.ts';
import { dosesOf } from './doses.ts';

/** `brief` is fewer words of the same. */
export interface ShortCare {
  readonly told: Told;
  readonly brief?: Told;
}

const place = ({ site, side }: CareEntry): string =>
  site === undefined ? '' : ` to ${thePlace({ site, side: side ?? null })}`;

const careIn = ({ entries: [entry] }: Told): CareEntry | null => (entry?.kind === 'care' ? entry : null);

/** CPR with its time, then drugs, then the rest; tourniquets stand in the headline. */
export function shortCare({ entries }: HandoffInput, day: Day): readonly ShortCare[] {
  const cares = caresTold(entries, day);
  const of = (isOf: (care: CareEntry) => boolean): readonly Told[] =>
    cares.filter((told) => {
      const care = careIn(told);
      return care !== null && isOf(care);
    });
  const drugs = of(({ care }) => care === 'medication');
  const inWords = (told: Told): readonly ShortCare[] => {
    const care = careIn(told);
    if (care === null) return [];
    const text = careText(care);
    const words = `${careName(care.care)}${place(care)}${text === '' ? '' : `, ${text}`}`;
    const end = endOf(care, inOrder(entries));
    const off =
      end === null
        ? ''
        : `, ${end.unclear ? 'one of them ' : ''}${endWord(care)} at ${clock(end.said.at, day)}`;
    const short: Told = { ...told, words: `${words}${off}` };
    if (care.care !== 'cpr') return [{ told: short }];
    return [{ told: { ...told, words: `${words} at ${clock(care.at, day)}${off}` }, brief: short }];
  };
  return [
    ...of(({ care }) => care === 'cpr').flatMap(inWords),
    ...shortDrugs(drugs, day),
    ...of(({ care }) => !['cpr', 'medication', 'tourniquet'].includes(care)).flatMap(inWords),
  ];
}

/**
 * A drug with its time, since the next dose goes by it: `Adrenaline, at 16:02 and again at 16:07`. How often it was given
 * is not counted: a dose that was kept in words alone would make the count a wrong one.
 */
function shortDrugs(drugs: readonly Told[], day: Day): readonly ShortCare[] {
  const toldOf = new Map(drugs.map((told) => [careIn(told), told]));
  return dosesOf([...toldOf.keys()].filter((care) => care !== null)).flatMap(({ name, doses }) => {
    const tolds = doses.flatMap((dose) => toldOf.get(dose) ?? []);
    const [first] = tolds;
    const times = doses.map(({ at }) => clock(at, day));
    if (first === undefined) return [];
    if (name === null) return [{ told: first }];
    const entries = tolds.flatMap((told) => told.entries);
    return [
      {
        told: { words: `${capital(name)}, at ${times.join(' and again at ')}`, entries },
        brief: { words: `${capital(name)} again at ${times.at(-1)}`, entries },
      },
    ];
  });
}
