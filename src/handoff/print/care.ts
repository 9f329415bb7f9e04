// Care on paper: when, what, where.

import { type Entry, standing } from '../../record/entry.ts';
import { careName, clock, type Day, inOrder } from '../../timeline/index.ts';
import { type CareEntry, careText } from '../sentences/care.ts';
import { capital } from '../sentences/list.ts';
import { placeName } from '../sentences/place.ts';
import { saidOffTold, tourniquetsIn } from '../sentences/tourniquet.ts';
import { unspokenOf } from '../sentences/trust.ts';
import { type Cell, type PrintedTable, UNCONFIRMED_SIGN } from './findings.ts';

const cell = (text: string, entries: readonly string[] = []): readonly Cell[] =>
  text === '' ? [] : [{ text, entries, weight: 'none' }];

function placeOf(entry: CareEntry): string {
  if (entry.site === undefined) return '';
  const unspoken = unspokenOf(entry);
  const place = capital(placeName({ site: entry.site, side: entry.side ?? null }));
  return unspoken.length === 0 ? place : `${place} (${unspoken.join('; ')})`;
}

/** The table, or null where no care was told. */
export function careTable(entries: readonly Entry[], day: Day): PrintedTable | null {
  const all = standing(inOrder(entries), 'care');
  if (all.length === 0) return null;
  const tourniquets = tourniquetsIn(entries);
  const saidOff = (entry: CareEntry): readonly Cell[] =>
    (tourniquets.find((one) => one.entries.includes(entry))?.saidOff ?? []).flatMap((said) => {
      const { words } = saidOffTold(said, day);
      return cell(`${capital(words)}${said.note.state === 'heard' ? ` ${UNCONFIRMED_SIGN}` : ''}`, [
        said.note.id,
      ]);
    });
  return {
    title: 'Care given',
    columns: ['Time', 'Care', 'Place', 'As said'],
    rows: all.map((entry) => [
      cell(clock(entry.at, day)),
      cell(`${careName(entry.care)}${entry.state === 'heard' ? ` ${UNCONFIRMED_SIGN}` : ''}`, [entry.id]),
      cell(placeOf(entry)),
      [...cell(careText(entry)), ...saidOff(entry)],
    ]),
  };
}
