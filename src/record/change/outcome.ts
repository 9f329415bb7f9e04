// What comes of trying a change on one entry: a new statement, nothing new, no sense, or something that cannot be.

import type { Statement } from '../../terms/index.ts';

export type Outcome =
  | {
      readonly kind: 'changed';
      readonly statement: Statement;
      /** slots that the change spoke of: how they were known before no longer counts */
      readonly spoken: readonly string[];
      /** slots kept from before although the change touches what they hung on */
      readonly carried?: readonly string[];
      readonly doubt?: readonly string[];
    }
  /** the entry says so already */
  | { readonly kind: 'same' }
  /** the entry has no such slot */
  | { readonly kind: 'senseless' }
  /** the slot is there, and the value cannot be */
  | { readonly kind: 'impossible'; readonly why: string };

export const SAME: Outcome = { kind: 'same' };
export const SENSELESS: Outcome = { kind: 'senseless' };
