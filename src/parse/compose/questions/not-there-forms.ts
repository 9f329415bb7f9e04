// The forms of an answer that names another place than was asked after, in the signs of `answer-shape.ts`.

const NO = '(?:(?:no|nope|nah|not really) )';
// What "was" or "did" so may be so no longer, and is kept in words.
const IT = '(?:(?:it|that) is )';
const IN = '(?:(?:coming from|in|on|at|from|around|over) )';
const PLACE = '(S\\d (?:of )?D\\d|S\\d|D\\d)';
const IS = '(?: (?:is|does|do|has|are|F|is F|that F|that is F|that is))?';
// "Below that", "a bit further down", "lower".
const FROM_THERE =
  '(?:(?:(?:bit|little|slightly|way|much|more) )*(?:(?:further|lower|higher) (?:(?:down|up) )?|(?:down|up|below|above|under|underneath|beneath) )(?:(?:from )?(?:that|it|there) )?)';

const form = (...parts: readonly string[]): RegExp => new RegExp(`^${parts.join('')}$`);

/** Each form of such an answer: which of its places is denied and which has it; a side that is put right at its end is the third and fourth. */
export const NAMES_BOTH: readonly {
  readonly form: RegExp;
  readonly not: number;
  readonly there: number;
  readonly parted?: true;
}[] = [
  // "Not the left, the right": it cannot be both.
  { form: form(NO, '?', IT, '?not (D\\d) (D\\d)', IS), not: 1, there: 2 },
  // "It's not the foot, it's the hand".
  {
    form: form(NO, '?', IT, '?not ', IN, '?', PLACE, ' (?:but |just |only |', IT, ')+', IN, '?', PLACE, IS),
    not: 1,
    there: 2,
  },
  // "Not the ankle, the shin"; without its pause both may be denied.
  {
    form: form(NO, '?', IT, '?not ', IN, '?', PLACE, ' ', IN, '?', PLACE, IS),
    not: 1,
    there: 2,
    parted: true,
  },
  // "It's not the hip, it's the knee, and not the right one, the left one".
  {
    form: form(
      NO,
      '?',
      IT,
      '?not ',
      PLACE,
      ' (?:but )?',
      IT,
      PLACE,
      ' (?:and )?',
      IT,
      '?not ',
      PLACE,
      ' ',
      IT,
      '?',
      PLACE,
    ),
    not: 1,
    there: 2,
  },
  // "The thumb isn't, it's the index finger", "the shin doesn't, the ankle does".
  {
    form: form(NO, '?', IN, '?', PLACE, ' (?:is|does|do|has|are) not (?:but )?', IT, '?', IN, '?', PLACE, IS),
    not: 1,
    there: 2,
  },
  // "It's the wrist, not the elbow".
  {
    form: form(NO, '?', IT, IN, '?', PLACE, '(?: that F| that is F)? (?:and |but )?not ', IN, '?', PLACE),
    not: 2,
    there: 1,
  },
];

/** "Not the ankle, the shin": who asked may have put the question right. */
export const BARE = /^not (?!.*(\bit is\b|\bthat is\b| (is|does|do|has|are|F)$))/;

// "No, but the left one is", "no, just the hand".
export const SURELY = form(NO, '+(?:but |just |only |', IT, ')+', IN, '?', PLACE, IS);
export const SAYS_IS = form(NO, '+', IN, '?', PLACE, ' (?:is|does|do|has|are)');
// "No, in the right", "no, below that, the belly": the next one may be looked at.
export const PERHAPS = form(NO, '+(?:', IN, '|', FROM_THERE, ')', IN, '?', PLACE);
// "No, the right one."
export const OTHER_SIDE = form(NO, '+(D\\d)');
// "No, at the front", "no, the outside does".
export const OF_PART = form(NO, '+(?:just |only |', IT, '|', IN, ')*P(\\d)( is| does| has| hurts)?');
// "No, both of them."
export const OF_BOTH = form(NO, '+(?:but |', IT, '|', IN, ')*(D\\d)(?: of them)?', IS);
