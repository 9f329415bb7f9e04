// Where everything lies, and the text that binds what is sealed to its place.

import type { Key } from './shelf.ts';

/** An event of a record's log, by its place, counted from 1. */
export const rowKey = (record: string, place: number): Key => ['row', record, place];
/** What the record is called and where its log ends. */
export const headKey = (record: string): Key => ['head', record];
/** The sound of one utterance. */
export const clipKey = (record: string, utterance: string): Key => ['clip', record, utterance];
/** What this device needs of the incident that it is in with others; the rows of its book of what was sent by their first number. */
export const linkKey = (what: 'member' | 'got' | 'row', from?: number): Key =>
  from === undefined ? ['link', what] : ['link', what, from];
/** The identifier of the record that was open last; no patient's words. */
export const OPEN_KEY: Key = ['open'];

/** Everything that is sealed lies under one of these. */
export const SEALED_PREFIXES: readonly Key[] = [['row'], ['head'], ['clip'], ['link']];

/** What a sealed value is bound to: its kind, its record and its number, in one text that no other place has. */
export const placeOf = (key: Key): string => `fieldsay/1 ${JSON.stringify(key)}`;
