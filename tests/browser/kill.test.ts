// The browser is killed while talk arrives: what was shown as kept is there at the next start, and nothing is there twice.
// ROUNDS=100 npx vitest run --project browser tests/browser/kill.test.ts makes the long run.

import { execSync } from 'node:child_process';
import { afterEach, describe, expect, inject, it } from 'vitest';
import { seeded } from '../seeded.ts';
import { createProfile, type Profile } from './profile.ts';
import { ready } from './visit.ts';

const ROUNDS = Number(process.env.ROUNDS ?? 20);

let profile: Profile | null = null;
afterEach(() => profile?.remove());

/** The processes of this profile's browser and of no other. */
function kill(folder: string): void {
  const found = execSync(`pgrep -f -- ${folder} || true`, { encoding: 'utf8' })
    .split('\n')
    .map(Number)
    .filter((id) => id > 0 && id !== process.pid);
  for (const id of found)
    try {
      process.kill(id, 'SIGKILL');
    } catch {
      // It went with the ones before it.
    }
}

describe('a killed browser', () => {
  it(`loses nothing that was shown as kept, in ${ROUNDS} rounds`, {
    timeout: 60_000 + ROUNDS * 20_000,
  }, async () => {
    profile = createProfile();
    const random = seeded(4).next;
    let [shown, most, said, found] = [0, 0, 0, 0];
    for (let round = 0; round <= ROUNDS; round += 1) {
      const context = await profile.start();
      const page = context.pages()[0] ?? (await context.newPage());
      await page.goto(inject('page'));
      if (round === 0) await page.getByRole('button', { name: 'I have read this' }).click();
      await ready(page);
      if (round > 0) await page.locator('.saved[data-said]').waitFor();
      found = round === 0 ? 0 : Number(await page.locator('.saved').getAttribute('data-said'));
      expect(found).toBeGreaterThanOrEqual(shown);
      expect(found).toBeLessThanOrEqual(said);
      expect(await page.locator('.notice.trouble').count()).toBe(0);
      most += found - shown;
      if (round === ROUNDS) {
        const text = (await page.locator('.timeline').textContent()) ?? '';
        const numbers = [...text.matchAll(/remark number (\d+)/g)].map(([, number]) => Number(number));
        // Each line that is there at all is there once, and none before the last is missing.
        expect(numbers.toSorted((a, b) => a - b)).toEqual(
          Array.from({ length: found }, (_, index) => index + 1),
        );
        kill(profile.folder);
        break;
      }
      said = found;
      // Talk arrives without a pause until the browser is gone; each line has a number of its own.
      let running = true;
      shown = found;
      const field = page.getByLabel('What is said');
      const talk = async (): Promise<void> => {
        while (running) {
          said += 1;
          await field.fill(`invented remark number ${said}, left wrist swelling`);
          await field.press('Enter');
        }
      };
      const watch = async (): Promise<void> => {
        while (running) {
          const seen = await page.evaluate(() =>
            Number(document.querySelector('.saved')?.getAttribute('data-said') ?? 0),
          );
          shown = Math.max(shown, seen);
        }
      };
      const ends = Promise.allSettled([talk(), watch()]);
      await new Promise((resolve) => setTimeout(resolve, 300 + random() * 2000));
      kill(profile.folder);
      running = false;
      await ends;
      await context.close().catch(() => undefined);
    }
    console.log(
      `killed ${ROUNDS} times: ${found} utterances there at the end, ${shown} of them shown as kept, 0 missing, 0 twice; ${most} more were on the disk than the screen had said`,
    );
    expect(found).toBeGreaterThan(ROUNDS);
  });
});
