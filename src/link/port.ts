// What the link asks of a messaging server: the real one and the one in memory pass one suite of tests.

import type { Bytes } from './bytes.ts';

export type LineState =
  | { readonly state: 'connecting' }
  | { readonly state: 'connected' }
  /** it is tried again by itself */
  | { readonly state: 'cut' }
  /** the server no longer knows the credential; it is tried again now and then */
  | { readonly state: 'put-out' }
  | { readonly state: 'closed' };

export type Stored =
  /** the server has it; `by` names the vehicle whose own server it is, null for the post's */
  | { readonly kind: 'stored'; readonly by: string | null }
  /** the subject has its one message already, this or an earlier one */
  | { readonly kind: 'there-already' }
  /** the server will not take it, and why; trying again is no use before something changes */
  | { readonly kind: 'refused'; readonly why: string }
  /** no answer: it may have arrived or not, and is to be sent again */
  | { readonly kind: 'not-reached' };

export type Asked =
  | { readonly kind: 'answer'; readonly bytes: Bytes; readonly subject: string }
  /** the server says that nobody listens there */
  | { readonly kind: 'nobody' }
  | { readonly kind: 'not-reached' };

export interface Heard {
  readonly subject: string;
  readonly bytes: Bytes;
  /** where an answer goes, or null */
  readonly reply: string | null;
}

/** One connection to a server. Nothing here throws or rejects. */
export interface Line {
  /** one message on its own subject, kept by the server for good */
  store(subject: string, bytes: Bytes): Promise<Stored>;
  /** to whoever listens now */
  tell(subject: string, bytes: Bytes): void;
  ask(subject: string, bytes: Bytes, withinMs: number): Promise<Asked>;
  /** gives what ends it */
  hear(subject: string, heard: (heard: Heard) => void): () => void;
  /** calls at once with the present state, and with each later one; gives what ends it */
  watch(changed: (state: LineState) => void): () => void;
  close(): Promise<void>;
}

/** A message that the server keeps. */
export interface KeptMessage {
  readonly subject: string;
  readonly bytes: Bytes;
  /** the server's own number for it, rising */
  readonly place: number;
}

/** How far reading has come: the server's number of the last message, and what it was. */
export interface Reached {
  readonly place: number;
  readonly subject: string;
}

/** What only the post asks: the messages in the order in which the server took them. */
export interface Stream {
  /** names this very stream: another one, made after the first was lost, has another name */
  readonly made: string;
  /**
   * Calls with each message after a place (null: from the first), old ones first and then as they come; gives what ends it.
   * Where the server has another message or none at that place it has lost what its disk had not synced, and gives those
   * numbers out a second time: then all is read from the first again.
   */
  follow(after: Reached | null, took: (message: KeptMessage) => void): () => void;
  /** the message that a subject has, or null where it has none or the server is out of reach */
  find(subject: string): Promise<KeptMessage | null>;
}
