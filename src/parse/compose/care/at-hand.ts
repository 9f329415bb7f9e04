// Whether care that is named is only at hand yet: "got a tourniquet ready", "there's a splint in my bag but I haven't used it".

import { hasTag } from '../../islands/island.ts';
import { type Piece, readingOf } from '../../pieces/piece.ts';
import { saidIn, type Token } from '../../token.ts';

export function isAtHand(tokens: readonly Token[], piece: Piece): boolean {
  const island = readingOf(piece, 'care');
  if (island === null || !hasTag(island, 'noun') || tokens[piece.to - 1]?.pause === 'end') return false;
  const end = tokens.findIndex(({ pause }, at) => at >= piece.to && (pause === 'end' || pause === 'ask'));
  const after = saidIn(tokens, piece.to, end < 0 ? tokens.length : end + 1);
  return (!hasTag(island, 'on') && NEAR.test(after)) || NOT_YET.test(after);
}

// Where it lies, or that it waits; "ready to move" is of somebody.
const NEAR =
  /^((is|are|here|all|just|right|sitting|laid|lying) )*(ready\b(?! to (move|lift|load|fly|roll))|(at|to) hand\b|handy\b|standing by\b|out and ready\b|(here )?(in|out of|beside|by|next to|with) (my|me|our|us|the|his|her|your) ?(pocket|bag|pack|rucksack|backpack|kit|jacket|belt|vest|car|truck|van|boat|box|hand|side)?\b)/;

// "But I have not put it on", "it isn't on yet": the thing that was named.
const NOT_YET =
  /\b(not|never) (yet )?(put|used|using|applied|fitted|opened|needed) (it|that|them|one|any)( on)?( yet)?($| (but|because|as|since|so|and)\b)|\b(it|that|they) (is|are|was|has|have) not (yet )?(been )?(on|used|applied|put on|fitted)( yet)?($| (but|because|as|since|so|and)\b)/;
