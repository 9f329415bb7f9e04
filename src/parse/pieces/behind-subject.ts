// "His knees don't hurt", "my neck don't hurt", "the toes don't move on the left": what elsewhere tells somebody what to do, or goes on to the next
// place, says behind its subject what is so.

import { hasTag } from '../islands/island.ts';
import { saidIn, type Token } from '../token.ts';
import { marked, type Piece, readingOf, tagIn } from './piece.ts';
import { reread } from './reread.ts';

/** The pieces with each such "do not" read as a denial, and "do not move" and "move" as checks of the limb. */
export const readBehindSubjects = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.map((piece, i) => {
    if (isMoving(pieces, i, tokens)) return moving(piece);
    // "On the left" is one piece again.
    if (piece.role === 'side' && isMoving(pieces, i - 1, tokens)) return { ...piece, from: piece.from - 1 };
    if ((piece.role !== 'mood' && piece.role !== 'csm') || !opensWithDoNot(piece, tokens)) return piece;
    // "Don't give her any pain": what nobody can give is denied, and not forbidden.
    if (marked(piece, 'forbids') && pieces[i + 1]?.role === 'finding')
      return surely(reread(piece, 'negation', 'negation.negation', { negation: 'before' }));
    const check = readingOf(piece, 'csm');
    const isTold = !isBehindMany(pieces[i - 1], tokens);
    // "Don't move your feet" checks nothing.
    if (isTold)
      return check === null || !hasTag(check, 'behind')
        ? piece
        : surely(reread(piece, 'mood', 'talk.instruction', { mood: 'instruction' }));
    if (check !== null) return { ...piece, role: 'csm', islands: [check], weak: false };
    return piece.to - piece.from === 2
      ? surely(reread(piece, 'negation', 'negation.negation', { negation: 'before' }))
      : piece;
  });

const isMoving = (pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean => {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  return piece !== undefined && next?.role === 'side' && isMoveOn(pieces, i, tokens);
};

const MOVE_ON = /^(move|moving) on$/;
const LINKS = /^((is|are|all|both|still|now|do) ?)+$/;
const DIGITS = /^(fingers|toes|thumb|finger|toe)$/;

// "Toes move on the left", "the fingers are moving on the right hand". "Pelvis, moving on" and "pelvis moving on" go to the next place.
function isMoveOn(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const piece = pieces[i];
  if (piece?.role !== 'intention' || !MOVE_ON.test(saidIn(tokens, piece.from, piece.to))) return false;
  const at = pieces.slice(0, i).findLastIndex(({ role }) => role === 'site');
  const site = pieces[at];
  if (site === undefined || tokens.slice(site.to - 1, piece.from).some(({ pause }) => pause !== ''))
    return false;
  const links = saidIn(tokens, site.to, piece.from);
  if (links !== '') return LINKS.test(links);
  return tokens[piece.from]?.word === 'move' || DIGITS.test(tokens[site.to - 1]?.word ?? '');
}

const MOVES = { csm: '', aspect: 'motion', present: 'yes', ends: '', 'spoken-site': '', behind: '' };

const moving = (piece: Piece): Piece => ({
  ...reread(piece, 'csm', 'csm.moves', MOVES),
  to: piece.to - 1,
  weak: false,
});

const isBehindMany = (subject: Piece | undefined, tokens: readonly Token[]): boolean =>
  subject !== undefined &&
  tokens[subject.to - 1]?.pause === '' &&
  (isMany(subject, tokens) || isNotTold(subject, tokens));

// Nobody is told not to hurt: "my neck don't hurt" is said of one thing too.
const SIGNS = new Set('hurt ache sting throb burn itch bleed swell seem work have feel'.split(' '));

// "Left knee don't look swollen", and no "don't look at it".
const AWAY = new Set(['', ...'at up down away over here there now just yet please'.split(' ')]);

function isNotTold(subject: Piece, tokens: readonly Token[]): boolean {
  const [verb, next] = [tokens[subject.to + 2], tokens[subject.to + 3]];
  if (readingOf(subject, 'sites') === null || verb === undefined) return false;
  return SIGNS.has(verb.word) || (verb.word === 'look' && verb.pause === '' && !AWAY.has(next?.word ?? ''));
}

const opensWithDoNot = ({ from }: Piece, tokens: readonly Token[]): boolean =>
  tokens[from]?.word === 'do' && tokens[from + 1]?.word === 'not';

// One thing does not; "left arm, don't move" tells somebody.
function isMany(subject: Piece, tokens: readonly Token[]): boolean {
  const site = readingOf(subject, 'sites');
  if (site !== null)
    return hasTag(site, 'plural') || /(s|feet|teeth)$/.test(tokens[subject.to - 1]?.word ?? '');
  if (subject.role === 'side')
    return tagIn(subject, 'sides', 'side') === 'both' || tokens[subject.to - 1]?.word === 'ones';
  const isThing =
    subject.role === 'finding' ||
    subject.role === 'csm' ||
    subject.role === 'limbs' ||
    subject.role === 'unknown' ||
    subject.role === 'small';
  return isThing && /(^(they|those|these|others)|[^su'’]s)$/.test(tokens[subject.to - 1]?.word ?? '');
}

const surely = (piece: Piece): Piece => ({ ...piece, weak: false });
