// What each control of the sheet that changes an entry is given.

import type { Entry } from '../../record/index.ts';
import type { Changed } from '../desk/index.ts';

export interface Part {
  readonly entry: Entry;
  /** tells what came of a change */
  readonly tell: (changed: Changed) => void;
}
