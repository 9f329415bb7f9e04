// What can be stated about a patient, without when or by whom: the shapes that frames and entries share.

import type { Site } from './sites.ts';
import type {
  Aspect,
  Care,
  Digit,
  Finding,
  Part,
  PulsePoint,
  SeverityWord,
  Side,
  StrengthWord,
  Topic,
  Warmth,
} from './words.ts';

/** A vertebra (`C5`, `T4`, `L2`) or a rib's number (`rib-7`). */
export type Level = string;

export interface FindingStatement {
  readonly kind: 'finding';
  readonly site: Site;
  readonly side: Side | null;
  readonly finding: Finding;
  /** false for a pertinent negative */
  readonly present: boolean;
  readonly part?: readonly Part[];
  readonly level?: Level;
  readonly size?: { readonly value: number; readonly unit: 'cm' };
  /** a word, or the patient's own 0 to 10 */
  readonly severity?: SeverityWord | number;
  readonly count?: number;
  readonly quality?: readonly string[];
}

export interface CsmStatement {
  readonly kind: 'csm';
  readonly site: 'hand' | 'foot';
  readonly side: Side | null;
  readonly aspect: Aspect;
  /** true where intact */
  readonly present: boolean;
  readonly capRefillSeconds?: number;
  readonly pulse?: PulsePoint;
  readonly warmth?: Warmth;
  readonly digit?: Digit;
  /** a word, or the Medical Research Council grade 0 to 5 */
  readonly strength?: StrengthWord | number;
  readonly quality?: readonly string[];
}

export type GcsPart = number | 'NT';

export type VitalReading =
  | {
      readonly vital: 'pulse' | 'respirations';
      readonly value: { readonly rate?: number; readonly quality?: readonly string[] };
    }
  | {
      readonly vital: 'blood-pressure';
      readonly value: {
        readonly systolic: number;
        readonly diastolic: number | null;
        readonly method?: 'palpation';
      };
    }
  | {
      readonly vital: 'oxygen-saturation';
      readonly value: { readonly percent: number; readonly onOxygen?: boolean };
    }
  | { readonly vital: 'temperature'; readonly value: { readonly celsius: number } }
  | { readonly vital: 'glucose'; readonly value: { readonly mgPerDl: number } }
  | {
      readonly vital: 'skin';
      readonly value: { readonly color?: string; readonly temperature?: string; readonly moisture?: string };
    }
  | {
      readonly vital: 'pupils';
      readonly value: {
        readonly equal?: boolean;
        readonly round?: boolean;
        readonly reactive?: boolean;
        readonly leftMm?: number;
        readonly rightMm?: number;
        /** where one side alone was said to react or not */
        readonly leftReactive?: boolean;
        readonly rightReactive?: boolean;
        readonly quality?: readonly string[];
      };
    }
  | {
      readonly vital: 'responsiveness';
      readonly value: { readonly avpu?: 'A' | 'V' | 'P' | 'U'; readonly orientation?: number };
    }
  | {
      readonly vital: 'gcs';
      readonly value: {
        readonly eye?: GcsPart;
        readonly verbal?: GcsPart;
        readonly motor?: GcsPart;
        readonly total?: number;
      };
    }
  | { readonly vital: 'pain-score'; readonly value: { readonly score: number } }
  | { readonly vital: 'capillary-refill'; readonly value: { readonly seconds: number } };

export type VitalStatement = { readonly kind: 'vital' } & VitalReading;

export interface HistoryStatement {
  readonly kind: 'history';
  readonly topic: Topic;
  readonly text: string;
  /** false for a denied one ("no allergies") */
  readonly present?: boolean;
  /** with topic `age` */
  readonly years?: number;
  /** with topic `weight` */
  readonly kg?: number;
}

export interface CareStatement {
  readonly kind: 'care';
  readonly care: Care;
  readonly site?: Site;
  readonly side?: Side | null;
  /** with `medication`: what was given; elsewhere what was said of it ("four litres a minute") */
  readonly text?: string;
}

export interface VisitStatement {
  readonly kind: 'visit';
  readonly site: Site;
  readonly side: Side | null;
}

export interface MarkStatement {
  readonly kind: 'mark';
  readonly text: string;
}

export interface NoteStatement {
  readonly kind: 'note';
  readonly text: string;
}

export type Statement =
  | FindingStatement
  | CsmStatement
  | VitalStatement
  | HistoryStatement
  | CareStatement
  | VisitStatement
  | MarkStatement
  | NoteStatement;

export type StatementKind = Statement['kind'];

/** How a slot came to be known: said in this talk, carried from the site in mind or the question, or worked out. */
export type Known = 'spoken' | 'carried' | 'inferred';
