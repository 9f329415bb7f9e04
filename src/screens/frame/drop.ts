// A talk file or a recording may be dropped anywhere on the page; the browser must not open it in the page's place.

import { openFile } from '../listen/open-file.ts';
import type { Tools } from './tools.ts';

/** Takes files that are dropped on `target`. */
export function takeDroppedFiles(target: Window, tools: Pick<Tools, 'desk' | 'player' | 'ear'>): void {
  const carriesFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') === true;
  target.addEventListener('dragover', (event) => {
    if (carriesFile(event)) event.preventDefault();
  });
  target.addEventListener('drop', (event) => {
    if (!carriesFile(event)) return;
    event.preventDefault();
    const [file] = event.dataTransfer?.files ?? [];
    if (file !== undefined) void openFile(tools, file);
  });
}
