// One site phrase from its pieces: which sites, on which side, which part of them, and how sure its words are.

import { isPaired, isSite, type Known, type Part, type Side, type Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { hasTag, type Island, tagOf, tagsOf } from '../../islands/island.ts';
import { levelsOf } from '../../islands/levels.ts';
import { isLikely, isSmall, type Piece, readingOf } from '../../pieces/piece.ts';
import { isPaused, pauseBefore } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import type { SitePhrase } from './item.ts';

import { isMirror, partsOf, sideBefore } from './said-side.ts';

/** The phrase of these pieces around a site; `lead` is the piece before them. */
export function sitePhrase(
  pieces: readonly Piece[],
  site: Piece,
  lead: Piece | undefined,
  tokens: readonly Token[],
): SitePhrase {
  const island = readingOf(site, 'sites') as Island;
  const { from } = pieces[0] ?? site;
  const { to } = pieces.at(-1) ?? site;
  const isDigits = /^(fingers|toes)$/.test(tagOf(island, 'site') ?? '');
  // "Other fingers pink" are the rest of the same hand's.
  const sides = pieces
    .flatMap((piece) => (piece.role === 'side' || isMirror(piece) ? [sideBefore(piece)] : []))
    .filter((side) => !(isDigits && side === 'mirror'));
  const own = tagOf(island, 'side') as Side | null;
  const spoken = sides.find((side): side is Side => side !== null && side !== 'mirror') ?? own;
  const parts = [
    ...pieces.flatMap((piece) => (piece.role === 'part' ? partsOf(piece) : [])),
    ...(tagsOf(island, 'part') as Part[]),
  ];
  // "Right lumbar region": on a side it is another place than in the middle.
  const sided = spoken === 'left' || spoken === 'right' || spoken === 'both' ? tagOf(island, 'sided') : null;
  const sites = (sided ?? tagOf(island, 'site') ?? '').split('+').filter(isSite);
  const mine = lead !== undefined && isSmall(lead, 'mine');
  const owned = mine || (lead !== undefined && isSmall(lead, 'owner'));
  return {
    from,
    to,
    sites: sites.flatMap((one) => refsOf(one, spoken, island, parts, isOneOf(tokens, site.from))),
    led: startsWithPreposition(pieces, tokens) || leads(lead, tokens),
    sideLast: pieces.some((piece) => piece.role === 'side' && piece.from >= site.to),
    mirrored: sides.includes('mirror'),
    doubtful: site.weak && pieces.length === 1 && !owned,
    owned,
    // "My right" is one phrase of the grammar.
    mine: mine || tokens.slice(from, site.from).some(({ word }) => word === 'my'),
    denied: pieces.some((piece) => piece.role === 'side' && tokens[piece.from]?.word === 'neither'),
    homophone: pieces.some(
      (piece) => (piece.role === 'side' || piece === site) && isLikely(piece, 'homophone'),
    )
      ? saidIn(tokens, from, to)
      : null,
  };
}

// "One of his knees" is not both of them.
const isOneOf = (tokens: readonly Token[], from: number): boolean =>
  /\bone of( (the|his|her|their|my|your))?$/.test(saidIn(tokens, Math.max(0, from - 3), from));

function refsOf(
  site: Site,
  spoken: Side | null,
  island: Island,
  parts: readonly Part[],
  isOne: boolean,
): readonly SiteRef[] {
  const plural = spoken === null && hasTag(island, 'plural') && isPaired(site) && !isOne;
  const side: Side | null = plural ? 'both' : spoken;
  const sideKnown: Known | null = side === null ? null : plural ? 'inferred' : 'spoken';
  const sided = side === null ? tagOf(island, 'sided') : null;
  const ref = {
    site,
    side,
    sideKnown,
    parts: [...new Set(parts)],
    ...(sided !== null && isSite(sided) ? { sided } : {}),
  };
  const levels = levelsOf(island);
  return levels.length === 0 ? [{ ...ref, level: null }] : levels.map((level) => ({ ...ref, level }));
}

const PREPOSITIONS =
  /^(to|on|over|of|in|at|along|down|round|around|only|just|from|across|under|behind|near)$/;

const isPreposition = (token: Token | undefined): boolean => PREPOSITIONS.test(token?.word ?? '');

/** True where these pieces open with a preposition of their own ("on the left" as one phrase of the grammar). */
export const startsWithPreposition = (pieces: readonly Piece[], tokens: readonly Token[]): boolean => {
  const [first] = pieces;
  return first !== undefined && first.role !== 'site' && isPreposition(tokens[first.from]);
};

/** True where `lead`, the piece before a phrase, is a preposition or an owner that one leads to ("to his chin"). */
export function leads(lead: Piece | undefined, tokens: readonly Token[]): boolean {
  if (lead === undefined) return false;
  if (isSmall(lead, 'preposition') && !isPaused(tokens, lead)) return true;
  // "To his chin": the owner stands between the preposition and the site.
  const owner = isSmall(lead, 'owner') || isSmall(lead, 'mine');
  return owner && isPreposition(tokens[lead.from - 1]) && pauseBefore(tokens, lead) === '';
}
