// Text as the standard's `string` and `xhtml` allow it: no control characters, nothing empty, nothing that is markup.

import type { Narrative, Noted } from './shapes.ts';

const CONTROL = /[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu;

/** The words on one line, without what FHIR and XML forbid; null where nothing is left. */
export function plainWords(text: string): string | null {
  const words = text.replace(CONTROL, ' ').replace(/\s+/g, ' ').trim();
  return words === '' ? null : words;
}

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

const escaped = (text: string): string =>
  (plainWords(text) ?? '').replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);

const XHTML = 'http://www.w3.org/1999/xhtml';

/** A narrative with a paragraph for each sentence. */
export const narrative = (sentences: readonly string[]): Narrative => ({
  status: 'generated',
  div: `<div xmlns="${XHTML}">${sentences.map((sentence) => `<p>${escaped(sentence)}</p>`).join('')}</div>`,
});

/** A note for each text that has words; nothing where none has. */
export function noted(texts: readonly string[]): Noted {
  const note = texts.map(plainWords).flatMap((text) => (text === null ? [] : [{ text }]));
  return note.length === 0 ? {} : { note };
}
