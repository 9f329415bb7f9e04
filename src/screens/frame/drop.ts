// A talk file may be dropped anywhere on the page; the browser must not open it in the page's place.

import { openTalkFile } from '../play/open-talk.ts';
import type { Tools } from './tools.ts';

/** Takes files that are dropped on `target`. */
export function takeDroppedFiles(target: Window, { desk, player }: Pick<Tools, 'desk' | 'player'>): void {
  const carriesFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') === true;
  target.addEventListener('dragover', (event) => {
    if (carriesFile(event)) event.preventDefault();
  });
  target.addEventListener('drop', (event) => {
    if (!carriesFile(event)) return;
    event.preventDefault();
    const [file] = event.dataTransfer?.files ?? [];
    if (file !== undefined) void openTalkFile(desk, player, file);
  });
}
