// "Tell me if any of it hurts." "No." "No." "Yeah, that one.": such a question stands until another one is asked.

import type { Clause } from '../../clauses/clause.ts';
import type { Asked, Context, SiteRef } from '../../context.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { isChatter } from '../light.ts';
import { otherSide } from '../sites/side.ts';
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
  return asking && isThere ? { ...standing, sites: standing.sites.map((one) => turnedTo(one, sites)) } : null;
}

// "Left knee." "No, right knee." "No.": the same place on its other side is in mind.
const turnedTo = (one: SiteRef, mind: readonly SiteRef[]): SiteRef => {
  const other = otherSide(one.side);
  return mind.find(({ site, side }) => site === one.site && side !== one.side && side === other) ?? one;
};

/** Opens a question that stands again after a clause of the same breath that answered it, or that only named a place. */
export function standOn(talk: Talk, clause: Clause): void {
  const standing = standingIn(talk.context);
  const { asked: open } = talk.context;
  if (standing === null || (open !== null && open !== standing)) return;
  if (isLook(clause) && talk.context.sites.length > 0) {
    const asked = { ...standing, sites: talk.context.sites, either: false };
    bear(talk, { asked, askedBefore: asked });
  } else if (open === null && clause.mood === 'answer') bear(talk, { asked: standing });
}

/**
 * The looks and answers of "left hip no, right hip yes" under a question that stands, each as a clause of its own; null where the
 * clause is anything else.
 */
export function looksAnswered(talk: Talk, clause: Clause): readonly Clause[] | null {
  if (clause.mood !== 'statement' || standingIn(talk.context) === null) return null;
  const parts: Clause[] = [];
  let look: Piece[] = [];
  let said: Piece[] = [];
  const close = () => {
    if (said.length > 0) parts.push({ ...clause, pieces: look }, { ...clause, mood: 'answer', pieces: said });
    if (said.length > 0) [look, said] = [[], []];
  };
  for (const piece of clause.pieces) {
    if (marked(piece, 'answer', 'yes') || marked(piece, 'answer', 'no')) said.push(piece);
    else if (said.length > 0 && (piece.role === 'attribute' || isChatter(piece))) said.push(piece);
    else if (isPlace(piece)) {
      close();
      look.push(piece);
    } else return null;
  }
  close();
  const isWhole =
    look.length === 0 && parts.every(({ mood, pieces }) => mood === 'answer' || pieces.some(isSite));
  return isWhole && parts.length > 0 ? parts : null;
}

const isSite = ({ role }: Piece): boolean => role === 'site';

const isPlace = (piece: Piece): boolean =>
  isSite(piece) || piece.role === 'side' || piece.role === 'part' || isChatter(piece);

const standingIn = ({ askedBefore }: Context): (Asked & AskedFindings) | null =>
  askedBefore?.about === 'findings' && askedBefore.standing === true ? askedBefore : null;

/** True for a clause that only names a place, or says that the examiner looks there or feels it. */
export const isLook = ({ mood, pieces }: Clause): boolean =>
  (mood === 'statement' || mood === 'question') &&
  pieces.some(isSite) &&
  pieces.every((piece) => isPlace(piece) || piece.role === 'intention');

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
