// What a FHIR document is made from: what every handoff is, the examination's own name, and who confirmed what.

import type { HandoffInput } from '../input.ts';

export interface Confirmation {
  /** ids of the entries confirmed */
  readonly entries: readonly string[];
  /** the words that confirmed them, or `BY_HAND` of the record stage */
  readonly by: string;
  /** ISO 8601 with offset */
  readonly at: string;
}

export interface FhirInput extends HandoffInput {
  /**
   * names the examination: the same in each of its documents and in no other examination's, since every identifier in
   * the document comes of it
   */
  readonly record: string;
  /** in the order of the log; a confirmed entry that none of them names counts as confirmed by someone unknown */
  readonly confirmations?: readonly Confirmation[];
  /** names, where they are known */
  readonly people?: { readonly responder?: string; readonly partner?: string };
}
