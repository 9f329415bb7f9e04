// The foot of every page: which record it is, and which page of how many (CSS Paged Media, margin boxes).

/** Only what cannot end a string of CSS. */
const safe = (text: string): string => text.replace(/[^\w .:/-]/g, '');

/** Rules for the margins of the page; `hash` null where none could be worked out. */
export const footerRules = (id: string, hash: string | null): string => `@page {
  @bottom-left {
    content: "Record ${safe(id)}${hash === null ? '' : `  SHA-256 ${safe(hash.slice(0, 12))}…`}";
    font: 8pt sans-serif;
  }
  @bottom-right {
    content: "† unconfirmed   Page " counter(page) " of " counter(pages);
    font: 8pt sans-serif;
  }
}`;
