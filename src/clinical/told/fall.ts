// A fall as told: whether it was the patient who fell, and how far; a thing that fell on somebody is no fall of the patient.

import {
  FALL,
  HEIGHT_LENGTH,
  NOT_PATIENT,
  ON_A_PART,
  ON_SOMEBODY,
  OTHER_LENGTH,
  OTHER_MOVE,
  PERSON,
} from './fall-words.ts';
import { type Length, lengthsIn } from './height.ts';
import { isNegatedAt } from './mention.ts';

/** Where one clause of a telling ends. */
const STOPS = /[,;:!?]|\.(?!\d)|\b(?:and|but|except|however|then|when|while|as|so|before|after|because)\b/g;

/** Stands before the word of falling and names nobody. */
const ADVERBS =
  /(?:^|\s)(?:has|have|had|having|was|is|just|also|apparently|reportedly|possibly|probably|suddenly|accidentally|nearly|about|may|might|must|did|do|does|that|which|who|only|still|simply|and|the|a|an|to|of|by|from|in|large|small|big|heavy|huge|loose|mechanism|events|history|said|says|took|had|sustained|suffered|high|short|long|bad|hard|nasty|ground|same|level|low|mechanical|witnessed|unwitnessed)$/;

interface Clause {
  readonly from: number;
  readonly to: number;
}

function clausesOf(text: string): readonly Clause[] {
  const stops = [...text.matchAll(STOPS)];
  const ends = [...stops.map(({ index }) => index), text.length];
  const starts = [0, ...stops.map((stop) => stop.index + stop[0].length)];
  return starts.map((from, index) => ({ from, to: ends[index] ?? text.length }));
}

/** The last word before the verb that may be who fell; empty where none stands there. */
function subjectOf(before: string): { readonly word: string; readonly determined: boolean } {
  let rest = before.replace(/[-–]/g, ' ').replace(/\s+/g, ' ').trim();
  while (ADVERBS.test(rest)) rest = rest.replace(ADVERBS, '').trimEnd();
  const words = rest.split(' ');
  return {
    word: words.at(-1) ?? '',
    determined: words.length > 1 && /^(?:a|an|the|some|his|her|my|their|our|one)$/.test(words.at(-2) ?? ''),
  };
}

type Whose = 'patient' | 'other' | 'unsure';

function whoFell(text: string, clause: Clause, clauses: readonly Clause[], at: number, verb: string): Whose {
  const before = text.slice(clause.from, at);
  const after = text.slice(at + verb.length, clause.to);
  // "Dropped a slab on his foot" lets go of it; "fall of rock" is the rock's.
  if (
    verb === 'dropped' &&
    /^ (?:an?|the|his|her|my|it|some)\b(?! (?:few|hundred|couple|good|full|long))/.test(after)
  )
    return 'other';
  const of = /^ of (?:some |a |the )?([a-z]+)/.exec(after)?.[1];
  if (verb === 'fall' && of !== undefined && NOT_PATIENT.test(of)) return 'other';
  const { word, determined } = subjectOf(before);
  if (word !== '') {
    if (PERSON.test(word)) return 'patient';
    if (NOT_PATIENT.test(word)) return 'other';
    // A noun between an article and "fell" may be anybody or anything: "the plumber fell", "the hopper fell".
    return determined && verb !== 'fall' ? 'unsure' : 'patient';
  }
  // "A boulder came loose and fell": who fell is named in the clause before, and is a thing where it came down on somebody.
  const previous = clauses[clauses.indexOf(clause) - 1];
  const named =
    previous === undefined
      ? ''
      : (/^\s*(?:mechanism|events)?\s*(?:(?:a|an|the|some|large|big|huge|loose|heavy)\s+)*(?:\w+\s+)?/.exec(
          text.slice(previous.from, previous.to),
        )?.[0] ?? '');
  const thing = named
    .trim()
    .split(/\s+/)
    .some((each) => NOT_PATIENT.test(each));
  const rest = text.slice(at);
  return ON_SOMEBODY.test(after) || (thing && (ON_SOMEBODY.test(rest) || ON_A_PART.test(rest)))
    ? 'other'
    : 'patient';
}

/** The words before a length in a clause of its own, and behind it, leave it to the fall told before. */
const FILLER =
  /^(?:\s|\b(?:about|around|roughly|approximately|some|maybe|perhaps|at least|at most|nearly|almost|over|under|probably|possibly|i think|i reckon|think|reckon|says?|said|he|she|they|it|that|which|this|is|was|would be|'s|from|a|an|the|height|drop|distance|fall|of|another|further|more|least|good|estimated|or|down)\b|')*$/;

/** The length that belongs to a fall within this clause: the nearest that is not of another kind. */
function inClause(text: string, clause: Clause, at: number, lengths: readonly Length[]): Length | null {
  const near = lengths
    .filter(({ from, to }) => from >= clause.from && to <= clause.to)
    .filter(({ from, to }) => {
      if (OTHER_LENGTH.test(text.slice(to))) return false;
      const between = from > at ? text.slice(at, from) : text.slice(to, at);
      return HEIGHT_LENGTH.test(text.slice(to)) || !OTHER_MOVE.test(between);
    })
    .map((length) => ({ length, gap: length.from > at ? length.from - at : at - length.to }));
  return near.sort((a, b) => a.gap - b.gap)[0]?.length ?? null;
}

export interface Fall {
  /** it was the patient who fell; false: a thing, another person, or unsure */
  readonly ofPatient: boolean;
  /** null where no length belongs to it */
  readonly feet: number | null;
}

/** What the text tells of a fall; null where it tells none. */
export function fallIn(told: string): Fall | null {
  const text = told.toLowerCase();
  const clauses = clausesOf(text);
  const falls = [...text.matchAll(new RegExp(FALL.source, 'g'))].filter(
    ({ index }) => !isNegatedAt(text, index),
  );
  if (falls.length === 0) return null;
  const own = falls.flatMap((match) => {
    const clause = clauses.find(({ from, to }) => match.index >= from && match.index < to);
    return clause !== undefined && whoFell(text, clause, clauses, match.index, match[0]) === 'patient'
      ? [{ at: match.index, clause }]
      : [];
  });
  if (own.length === 0) return { ofPatient: false, feet: null };
  const lengths = lengthsIn(text);
  const theirs = own.flatMap(({ at, clause }) => inClause(text, clause, at, lengths) ?? []);
  const apart = lengths.filter((length) => {
    const clause = clauses.find(({ from, to }) => length.from >= from && length.to <= to);
    if (clause === undefined || own.some((each) => each.clause === clause)) return false;
    const before = text.slice(clause.from, length.from);
    const behind = text.slice(length.to);
    return !OTHER_LENGTH.test(behind) && (FILLER.test(before) || HEIGHT_LENGTH.test(behind));
  });
  const more = apart.filter(({ from }) => /\b(?:another|further|more) $/.test(text.slice(0, from)));
  const counted = theirs.length > 0 ? [...theirs, ...more] : apart;
  return {
    ofPatient: true,
    feet: counted.length === 0 ? null : Math.max(...counted.map(({ feet }) => feet)),
  };
}
