// "Tell me if any of it hurts." "No." "No." "Yeah, that one.": such a question stands until another one is asked.

import type { Clause } from '../../clauses/clause.ts';
import type { Asked, Context } from '../../context.ts';
import { isChatter } from '../light.ts';
import { bear, type Said, type Talk } from '../talk.ts';
import type { AskedFindings } from './settle.ts';

/**
 * The question that the next yes or no answers: the open one, else one that stands. It is asked of the place it was asked of
 * while that is in mind (`asking`: it was answered a breath ago), and anew of each place that is looked at (`looked`).
 */
export function askedNext(context: Context, looked: boolean): Asked | null {
  const { asked, asking, sites } = context;
  const standing = standingIn(context);
  if (asked !== null || standing === null) return asked;
  if (looked) return { ...standing, sites, either: false };
  const isThere =
    standing.sites.length > 0 && standing.sites.every(({ site }) => sites.some((one) => one.site === site));
  return asking && isThere ? standing : null;
}

/** Opens a question that stands again after a clause of the same breath that answered it, or that only named a place. */
export function standOn(talk: Talk, clause: Clause): void {
  const standing = standingIn(talk.context);
  if (standing === null || talk.context.asked !== null) return;
  if (isLook(clause) && talk.context.sites.length > 0) {
    const asked = { ...standing, sites: talk.context.sites, either: false };
    bear(talk, { asked, askedBefore: asked });
  } else if (clause.mood === 'answer') bear(talk, { asked: standing });
}

const standingIn = ({ askedBefore }: Context): (Asked & AskedFindings) | null =>
  askedBefore?.about === 'findings' && askedBefore.standing === true ? askedBefore : null;

const isLook = ({ mood, pieces }: Clause): boolean =>
  (mood === 'statement' || mood === 'question') &&
  pieces.some(({ role }) => role === 'site') &&
  pieces.every((piece) => piece.role === 'site' || piece.role === 'side' || isChatter(piece));

/** True where one more "no" to a question that stands would say the same again. */
export const isSaidAlready = ({ context }: Talk, asked: AskedFindings, said: readonly Said[]): boolean =>
  asked.standing === true &&
  said.every(({ statement }) =>
    context.last.some((one) => JSON.stringify(one) === JSON.stringify(statement)),
  );

/** True where a "no" comes after a "yes" of the same place: another press hurt, and that is not taken back. */
export const isOtherPress = ({ context }: Talk, asked: AskedFindings, said: readonly Said[]): boolean =>
  asked.standing === true &&
  said.some(
    ({ statement: a }) =>
      a.kind === 'finding' &&
      !a.present &&
      context.last.some(
        (b) =>
          b.kind === 'finding' &&
          b.present &&
          a.finding === b.finding &&
          a.site === b.site &&
          a.side === b.side,
      ),
  );
