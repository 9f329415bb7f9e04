// "Tell me if any of it hurts." "No." "No." "Yeah, that one.": such a question stands until another one is asked.

import type { Asked, Context } from '../../context.ts';

/**
 * The question that the next yes or no answers: the open one, else one that stands. It is asked of the place it was asked of
 * while that is in mind (`asking`: it was answered a breath ago), and anew of each place that is looked at (`looked`).
 */
export function askedNext({ asked, askedBefore, asking, sites }: Context, looked: boolean): Asked | null {
  if (asked !== null || askedBefore?.about !== 'findings' || askedBefore.standing !== true) return asked;
  if (looked) return { ...askedBefore, sites, either: false };
  const isThere =
    askedBefore.sites.length > 0 &&
    askedBefore.sites.every(({ site }) => sites.some((one) => one.site === site));
  return asking && isThere ? askedBefore : null;
}
