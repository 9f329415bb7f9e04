// Promises the items of the two spine rules as present, absent or unknown, and never says what follows from them.

export type { ItemState, SpineItem } from './item.ts';

/** To be shown beside the items. */
export const SPINE_NOTE =
  'Both rules decide on imaging, in clinicians’ hands. The items are recorded; nothing follows from them here.';

export { SPINE_RULES } from './rules.ts';
