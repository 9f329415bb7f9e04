// A screen reader hears what was entered whatever is open: another panel of a phone, or a sheet over the page.

import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { hear } from './hear.ts';

const { arrive } = arrivals();

describe('what was just entered', () => {
  it('is told while another panel of a phone is open, and each time anew', async () => {
    const { page } = await arrive({ width: 360, height: 740 });
    const told = page.getByRole('status').filter({ hasText: 'LEFT forearm: swelling' });
    await hear(page, 'left forearm swelling');
    await told.waitFor();
    await page.locator('.foot-way', { hasText: 'Entries' }).click();
    await hear(page, 'no bleeding of the right knee');
    await page.getByRole('status').filter({ hasText: 'RIGHT knee: bleeding: NO' }).waitFor();
    expect(await told.count()).toBe(0);
    const changes = page.evaluate(
      () =>
        new Promise((done) =>
          new MutationObserver(() => done('changed')).observe(
            document.querySelector('.last-said') ?? document,
            {
              childList: true,
              subtree: true,
            },
          ),
        ),
    );
    // The same once more is news too.
    await hear(page, 'no bleeding of the right knee');
    expect(await changes).toBe('changed');
  });

  it('is told on a sheet, which says nothing of what stood before it was opened', async () => {
    const { page } = await arrive({ width: 360, height: 740 });
    await hear(page, 'left forearm swelling');
    await page.getByRole('button', { name: 'More' }).click();
    const onSheet = page.getByRole('dialog').getByRole('status');
    await onSheet.waitFor({ state: 'attached' });
    expect(await onSheet.textContent()).toBe('');
    await hear(page, 'right knee deformity');
    await onSheet.filter({ hasText: 'RIGHT knee: deformity' }).waitFor();
  });
});
