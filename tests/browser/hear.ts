// Says a line to the page without a finger: for tests of what happens while one is elsewhere, and for the pictures.

import type { Page } from 'playwright-core';

/** Says a line as an ear does, whatever is open and wherever a finger is: no field is pressed for it. */
export const hear = (page: Page, line: string): Promise<void> =>
  page.locator('#talk-line').evaluate((field, words) => {
    const input = field as HTMLInputElement;
    input.value = words;
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    input.form?.requestSubmit();
  }, line);
