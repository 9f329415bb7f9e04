// Bears a correction in mind: what is said next goes on from what was put right, and not from the slip.

import { type CareStatement, isPaired, type Side, type Site, type Statement } from '../../../terms/index.ts';
import { caredFor } from '../../cared.ts';
import type { Cared, SiteRef } from '../../context.ts';
import type { Change, CorrectionTarget } from '../../frame.ts';
import { runOf } from '../../run.ts';
import { withChecks } from '../csm/checks.ts';
import { plainSite } from '../sites/site-ref.ts';
import { bear, type Talk } from '../talk.ts';

/** Changes the statements in mind, and the site in mind with them, as a correction of the last ones does. */
export function remember(talk: Talk, change: Change, target: CorrectionTarget): void {
  if (change.change === 'statement') {
    const { statement } = change;
    const isExam = statement.kind === 'finding' || statement.kind === 'csm';
    const others = talk.context.run.map((group) => group.filter((one) => !isTarget(one, target)));
    bear(talk, {
      said: [statement],
      checks: withChecks(talk.context.checks, [statement]),
      run: runOf([...others, [statement]]),
      ...(isExam ? { last: [statement] } : {}),
      ...(statement.kind === 'care' ? { cared: caredAnew(talk, statement, target) } : {}),
    });
    if (statement.kind === 'finding') bear(talk, { sites: [spoken(statement.site, statement.side)] });
    return;
  }
  const { said, last, sites, checks } = talk.context;
  const changed = (one: Statement): Statement => (fits(one, target) ? changedBy(one, change) : one);
  bear(talk, {
    said: said.map(changed),
    last: last.map(changed),
    run: runOf(talk.context.run.map((group) => group.map(changed))),
  });
  // Which of the checks was meant nobody can tell here: what was said last stands for the end.
  const isOfChecks = checks.length > 0 && last.some((one) => one.kind === 'csm' && changed(one) !== one);
  if (isOfChecks) bear(talk, { checks: withChecks([], last.map(changed)) });
  if (change.change === 'site') bear(talk, { sites: [spoken(change.site, change.side ?? null)] });
  if (change.change === 'side')
    bear(talk, {
      sites: sites.map((ref) =>
        isPaired(ref.site) ? { ...ref, side: change.side, sideKnown: 'spoken' as const } : ref,
      ),
    });
}

/** The care that was told, with what was put right of the latest that is meant. */
function caredAnew(
  { context: { cared } }: Talk,
  anew: CareStatement,
  target: CorrectionTarget,
): readonly Cared[] {
  const meant = cared.findLastIndex(
    ({ care, site, text }) =>
      care === (target.care ?? anew.care) &&
      (target.site === undefined || target.site === site) &&
      (target.text === undefined || target.text === text),
  );
  return cared.map((one, i) => (i === meant ? caredFor(anew, one.at) : one));
}

const spoken = (site: Site, side: Side | null): SiteRef => ({
  ...plainSite(site, side),
  sideKnown: side === null ? null : 'spoken',
});

const isTarget = (one: Statement, target: CorrectionTarget): boolean =>
  (target.kind === undefined || target.kind === one.kind) &&
  (target.finding === undefined || (one.kind === 'finding' && one.finding === target.finding)) &&
  fits(one, target);

const fits = (one: Statement, { side, site }: CorrectionTarget): boolean =>
  (side === undefined || ('side' in one && one.side === side)) &&
  (site === undefined || ('site' in one && one.site === site));

function changedBy(one: Statement, change: Change): Statement {
  if (one.kind !== 'finding') {
    const sided = one.kind === 'csm' || one.kind === 'visit';
    return sided && change.change === 'side' ? { ...one, side: change.side } : one;
  }
  switch (change.change) {
    case 'side':
      return { ...one, side: change.side };
    case 'site':
      return { ...one, site: change.site, ...(change.side === undefined ? {} : { side: change.side }) };
    case 'finding':
      return { ...one, finding: change.finding };
    case 'present':
      return { ...one, present: change.present };
    default:
      return one;
  }
}
