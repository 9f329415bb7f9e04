// "Correction, T five and T six" after "T four and T five": the vertebrae said anew stand for all that were said, each for one.

import type { FindingStatement, Level, Statement } from '../../../terms/index.ts';
import type { StatementFrame } from '../../frame.ts';
import type { Piece, Role } from '../../pieces/piece.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import type { Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { type StateAll, wouldSay } from './dry-run.ts';
import { isSame, ownTarget } from './not-that.ts';

/** The changes of a list of vertebrae or ribs in the place of the one said last; null where it is none. */
export function levelsAnew(
  talk: Talk,
  pieces: readonly Piece[],
  stateAll: StateAll,
): readonly Changed[] | null {
  const before = talk.context.last.filter((one) => one.kind === 'finding');
  const [first] = before;
  if (first === undefined || before.length !== talk.context.last.length) return null;
  const stated = wouldSay(talk, pieces, stateAll);
  const now = stated.length > 0 ? stated : placesAlone(talk, pieces, first);
  const isList = now.length > 1 && now.every(({ statement }) => isLevelOf(statement, first));
  if (!isList || !before.every((one) => isLevelOf(one, first))) return null;
  const gone = before.filter((one) => !now.some(({ statement }) => isSame(one, statement)));
  const changed = now.map((basis): Changed => {
    const { statement } = basis;
    const isSaid = before.some((one) => isSame(one, statement));
    const target = isSaid ? ownTarget(statement) : ownTarget(gone.shift() ?? statement);
    return { change: { change: 'statement', statement }, target, basis };
  });
  return [
    ...changed,
    ...gone.map((one): Changed => ({ change: { change: 'strike' }, target: ownTarget(one) })),
  ];
}

const isLevelOf = (one: Statement, first: FindingStatement): boolean =>
  one.kind === 'finding' &&
  one.level !== undefined &&
  one.site === first.site &&
  one.finding === first.finding &&
  one.present === first.present;

type Basis = Pick<StatementFrame, 'statement' | 'known' | 'doubt'>;

const PLACES: ReadonlySet<Role> = new Set(['site', 'side', 'small', 'talk']);

// "T five and T six" alone: what was said last is said of these.
function placesAlone(talk: Talk, pieces: readonly Piece[], first: FindingStatement): readonly Basis[] {
  if (!pieces.every(({ role }) => PLACES.has(role))) return [];
  return phrasesIn(itemsOf(talk, pieces))
    .flatMap(({ sites }) => sites)
    .flatMap(({ site, level }) =>
      level === null
        ? []
        : [
            {
              statement: { ...first, site, level: level as Level },
              known: { finding: 'carried' as const, present: 'carried' as const },
              doubt: [],
            },
          ],
    );
}
