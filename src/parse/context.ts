// What one utterance leaves for the next: the site in mind, the question still open, and what was last stated.

import type {
  Aspect,
  Care,
  CsmStatement,
  Digit,
  Finding,
  Known,
  Part,
  Side,
  Site,
  Statement,
  Topic,
  Vital,
} from '../terms/index.ts';
import type { Run } from './run.ts';

/** A site as it was named, with how its side came to be known (null where no side was said). */
export interface SiteRef {
  readonly site: Site;
  readonly side: Side | null;
  readonly sideKnown: Known | null;
  readonly parts: readonly Part[];
  readonly level: string | null;
  /** where it is instead when a side is said of it: a lumbar region's is the loin */
  readonly sided?: Site;
  /** of a range ("from elbow to wrist"): a place that it names, or what lies between those */
  readonly stretch?: 'end' | 'between';
}

/** A limb's end for circulation, sensation and motion. */
export interface LimbEnd {
  readonly site: 'hand' | 'foot';
  readonly side: Side | null;
  readonly sideKnown: Known | null;
  readonly digit?: Digit;
}

/** What the open question asks after; `also`: what else the same words ask after ("any neck pain or arm swelling?"). */
export type Asked = AskedOne & { readonly also?: readonly AskedOne[] };

export type AskedOne =
  | {
      readonly about: 'findings';
      /** `present`: what a "yes" says of it; false for "is the knee okay?" */
      readonly findings: readonly {
        readonly finding: Finding;
        readonly quality: readonly string[];
        readonly present: boolean;
      }[];
      readonly sites: readonly SiteRef[];
      /** asked with "no" in it ("no pain here?"), so that "yes" settles nothing */
      readonly negative: boolean;
      /** asked of one place or another ("in your neck or back?", "in either knee?"), so that "yes" does not say which */
      readonly either: boolean;
      /** "tell me if it hurts": every yes and no that follows answers it, one for each press */
      readonly standing?: true;
      /** "can you bend your knee?": a "no" says that it is limited, and a "yes" not how far it goes */
      readonly done?: true;
      /** the question as said */
      readonly text: string;
    }
  /** "on the left?", of what was last said without a side */
  | { readonly about: 'side'; readonly side: 'left' | 'right' }
  | {
      readonly about: 'csm';
      readonly aspects: readonly Aspect[];
      readonly ends: readonly LimbEnd[];
      /** asked which of the two it is ("which foot can't you feel?"), and what is so of it */
      readonly which?: { readonly present: boolean; readonly details: Partial<CsmStatement> };
    }
  /** `item`: the one thing asked after ("any blood thinners?"), as said */
  | { readonly about: 'topic'; readonly topic: Topic; readonly item?: string }
  /** `named`: it was only named ("taking a pulse"), so nothing but a bare figure answers */
  | { readonly about: 'vital'; readonly vital: Vital; readonly named?: true };

export interface Context {
  /** the site or sites in mind */
  readonly sites: readonly SiteRef[];
  /** the sites that the utterance before named in what was long ago, for "any rash there now?" */
  readonly recalled: readonly SiteRef[];
  readonly asked: Asked | null;
  /** the last question after findings, answered or not, for "and your back?" */
  readonly askedBefore: Asked | null;
  /** the words of the last question, where it asked after something; for an answer that settles nothing */
  readonly question: string | null;
  /** the last question was asked or answered in the utterance before, so "and your back" goes on with it */
  readonly asking: boolean;
  /** the last utterance as said, where it named a place to look at and nothing else; for a bare "no" after it */
  readonly looked: string | null;
  /** the examination statements last said as one, for "same on the right" */
  readonly last: readonly Statement[];
  /** what was checked last of one limb's end, each aspect once as it was told last, for "right foot same" */
  readonly checks: readonly CsmStatement[];
  /** every finding stated so far with its place, as "site finding side" (and "no" where it was denied), the latest last */
  readonly found: readonly string[];
  /** care that was told as given, each at its place once and each dose of a drug, the latest last */
  readonly cared: readonly Cared[];
  /** what was last stated of any kind but visits and notes, for a correction */
  readonly said: readonly Statement[];
  /** what was said of one side of one limb last, without a break */
  readonly run: Run;
  /** somebody else was spoken of */
  readonly others: boolean;
  /** nothing was asked, looked at or kept in words since then, so "actually no" can only mean that */
  readonly isSaidLast: boolean;
  /** it was told with a question at its end ("that's swollen, isn't it"), so a "no" turns it */
  readonly isToldAsking: boolean;
}

/** Care given, with its place and the time that was said of it. */
export interface Cared {
  readonly care: Care;
  readonly site: Site | null;
  readonly side: Side | null;
  /** what was given or how much, as said; null where nothing was said of that */
  readonly text: string | null;
  /** milliseconds since the epoch, or null where none was said */
  readonly at: number | null;
}

/** The context before anything was said. */
export const NOTHING_SAID: Context = {
  sites: [],
  recalled: [],
  asked: null,
  askedBefore: null,
  question: null,
  asking: false,
  looked: null,
  last: [],
  checks: [],
  found: [],
  cared: [],
  said: [],
  run: [],
  others: false,
  isSaidLast: false,
  isToldAsking: false,
};
