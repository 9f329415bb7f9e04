// What was said of one side of one limb without a break: a side that is put right behind it is that of all of it.

import { isWithin, regionOf, type Side, type Site, type Statement } from '../terms/index.ts';
import { limbOf } from './compose/sites/limb.ts';

/** What has a place on one side. */
export type Sided = Extract<Statement, { readonly kind: 'finding' | 'csm' | 'care' | 'visit' }> & {
  readonly site: Site;
  readonly side: Side;
};

/** The groups of a run, the latest last; those of one group were said as one. */
export type Run = readonly (readonly Sided[])[];

/** The run when these were stated as one: it goes on, or begins anew where they are of another limb or side. */
export function runOn(run: Run, statements: readonly Statement[]): Run {
  const placed = statements.filter(({ kind }) => PLACED.has(kind));
  const sided = placed.filter(isSided);
  const [first] = sided;
  // "Left or right?" looks at neither.
  if (placed.every(({ kind, ...one }) => kind === 'visit' && 'side' in one && one.side === 'both'))
    return run;
  if (first === undefined || sided.length < placed.length || !sided.every((one) => isAlong(first, one)))
    return [];
  const last = run.at(-1)?.at(-1);
  return last !== undefined && isAlong(last, first) ? [...run, sided] : [sided];
}

const PLACED: ReadonlySet<string> = new Set(['finding', 'csm', 'care', 'visit']);

const isSided = (one: Statement): one is Sided =>
  'site' in one &&
  one.site !== undefined &&
  (one.side === 'left' || one.side === 'right' || one.side === 'both');

const isAlong = (a: Sided, b: Sided): boolean =>
  a.side === b.side && (limbOf(a.site) ?? regionOf(a.site)) === (limbOf(b.site) ?? regionOf(b.site));

/** True for the same place, or one that holds the other. */
export const isNear = (a: Site, b: Site): boolean => isWithin(a, b) || isWithin(b, a);

/** The run of groups that were changed. */
export const runOf = (groups: readonly (readonly Statement[])[]): Run =>
  groups.filter((group) => group.length > 0).reduce(runOn, [] as Run);
