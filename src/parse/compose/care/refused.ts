// "Aspirin three hundred milligrams, she refused": what was offered, held back or spat out was not given; its words are kept together.

import { hasTag } from '../../islands/island.ts';
import { type Piece, readingOf } from '../../pieces/piece.ts';
import { saidIn } from '../../token.ts';
import type { Talk } from '../talk.ts';

/** Whom such words may be said of, and what may stand before them. */
const LEAD =
  '(?:(?:but|and|so|then|still|offered|he|she|they|i|we|it|that|this|the|his|her|patient|casualty|mother|mum|mom|father|dad|was|were|is|has|had|have|been|just|actually|simply|again|flatly|both|can|could|not|cannot|swallow) )*?';
/** What may stand behind them: a reason, or who said so. */
export const TAIL = String.raw`(?=$| (?:because|as|since|due|for|by|so|after|at (?!first)|until|till|yet|despite|though|although|in the end|this time|instead)\b)`;

/** As the care may be called again. */
const IT =
  '(?:it|them|that|this|any(?: of it)?|(?:the|his|her) (?:dose|drug|tablet|tablets|pill|pills|med|meds|medicine))';
const SOME = '(?:(?:most|half|some|all|part) of )?';

/** The words of a refusal, for a pattern. */
export const REFUSAL = [
  '(?:not|never) (?:actually |yet |been )*(?:given|administered|taken|swallowed|accepted|tolerated|used|applied|put on|fitted|started|delivered|injected)',
  `refus(?:ed|es|ing)(?: to (?:take|have|swallow|wear))?(?: ${IT})?`,
  `declin(?:ed|es|ing)(?: to (?:take|have))?(?: ${IT})?`,
  String.raw`withheld|held (?:back|off)|held(?= (?:because|as|since|for|due)\b)|turned ${IT} down`,
  `(?:spat|spit|spits|spitting) (?:all (?:of )?)?${IT} (?:straight |right |back )*out|(?:spat|spit) out ${IT}`,
  '(?:(?:did|would|will|could|can|does|do|has|have|had) not|never) (?:actually |even |yet |been )*' +
    '(?:take|took|taken|swallow|swallowed|want|have|had|accept|tolerate|get|got|give|given|gave|manage|managed)' +
    `(?: (?:him|her|them))?(?: ${IT})?(?: (?:down|in|off|on|to (?:him|her|them)))?`,
].join('|');

const REFUSED = new RegExp(`^${LEAD}(?:${REFUSAL})${TAIL}`);
/** It was given, and did not stay. */
export const LOST = new RegExp(
  `^${LEAD}(?:${[
    String.raw`(?:vomited|vomiting|threw|brought|puked|sicked|coughed|chucked) ${SOME}${IT} (?:(?:straight|right|all|back) )*(?:up|out)\b`,
    String.raw`(?:vomited|spat|spit) ${SOME}${IT}\b`,
    String.raw`(?:did|could|can|cannot) not keep ${IT} down\b`,
  ].join('|')})`,
);
/** Straight before its name: "declined the paracetamol", "nearly gave morphine". */
const NOT_GIVEN_BEFORE =
  /(?:^| )(?:refus(?:ed|es|ing)|declin(?:ed|es|ing)|offered|offering|withheld|withholding|held|nearly|almost|spat out)(?: (?:him|her|them|to|have|take|the|a|an|any|some|his|more|further))*$/;
const JOINED = /^(?:and|plus|with)$/;
/** "Refused at first, then took it": it was given after all. */
const AFTER_ALL =
  /\b(?:at first|to begin with|initially|but (?:then|later)|then|eventually|finally|in the end|later|now|has since)\b.*\b(?:took|taken|taking|given|gave|accepted|accepting|swallowed|agreed|had it|got it|kept it)\b/;

/** What the words behind the care, in its sentence and before other care, or straight before it, say of its being given. */
export function refusalOf(talk: Talk, piece: Piece): 'refused' | 'perhaps' | 'lost' | null {
  const { tokens } = talk;
  if (NOT_GIVEN_BEFORE.test(breathBefore(tokens, piece.from))) return 'refused';
  if (tokens[piece.to - 1]?.pause === 'end') return null;
  const end = tokens.findIndex(({ pause }, at) => at >= piece.to && (pause === 'end' || pause === 'ask'));
  const to = end < 0 ? tokens.length : end + 1;
  if (tokens[to - 1]?.pause === 'ask' || AFTER_ALL.test(saidIn(tokens, piece.to, to))) return null;
  const next = nextCare(talk, piece);
  const said = breathsIn(tokens, piece.to, to).filter(({ from }) => next === null || from < next.from);
  if (said.some(({ words }) => REFUSED.test(words))) return 'refused';
  if (said.some(({ words }) => LOST.test(words))) return 'lost';
  // "Paracetamol and ibuprofen, refused": of one of them, or of both.
  const isJoined = next !== null && next.from < to && JOINED.test(saidIn(tokens, piece.to, next.from));
  return isJoined && refusalOf(talk, next) === 'refused' ? 'perhaps' : null;
}

/** What is asked of care that stands, where it was refused perhaps or did not stay with the patient. */
export const REFUSAL_DOUBT = { perhaps: 'Was it given, or refused too?', lost: 'Was it kept down?' } as const;

const nextCare = ({ clauses }: Talk, { to }: Piece): Piece | null =>
  clauses.flatMap(({ pieces }) => pieces).find((one) => one.from >= to && isOtherCare(one)) ?? null;

/** A bare "given" is part of the words that deny it. */
const isOtherCare = (piece: Piece): boolean => {
  const island = piece.role === 'care' ? readingOf(piece, 'care') : null;
  return island !== null && !hasTag(island, 'takes');
};

function breathBefore(tokens: Talk['tokens'], from: number): string {
  const pause = tokens.findLastIndex((token, at) => at < from && token.pause !== '');
  return saidIn(tokens, pause + 1, from);
}

interface Breath {
  readonly from: number;
  readonly words: string;
}

function breathsIn(tokens: Talk['tokens'], from: number, to: number): readonly Breath[] {
  const found: Breath[] = [];
  for (let start = from; start < to; ) {
    const pause = tokens.findIndex((token, at) => at >= start && token.pause !== '');
    const end = pause < 0 ? to : Math.min(to, pause + 1);
    found.push({ from: start, words: saidIn(tokens, start, end) });
    start = end;
  }
  return found;
}
