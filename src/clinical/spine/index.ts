// Promises the items of the two spine rules as present, absent or unknown, and never says what follows from them.

import type { Chart } from '../chart.ts';
import type { SpineItem } from './item.ts';
import { canadian, nexus } from './rules.ts';

export type { ItemState, SpineItem } from './item.ts';

/** To be shown beside the items. */
export const SPINE_NOTE =
  'Both rules decide on imaging, in clinicians’ hands. The items are recorded; nothing follows from them here.';

export const spineItems = (chart: Chart): readonly SpineItem[] => [...nexus(chart), ...canadian(chart)];
