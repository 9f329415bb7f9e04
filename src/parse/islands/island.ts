// An island is a stretch of words that the grammar knows, with the tags on its path and the numbers read in it.

import type { TimeReading } from '../times/index.ts';

export interface FilledSlot {
  /** the grammar rule that stands for the slot: `numbers.number`, `times.time` */
  readonly rule: string;
  readonly from: number;
  readonly to: number;
  /** the number, where the slot is one */
  readonly value: number;
  /** the time, where the slot is one */
  readonly time: TimeReading['time'] | null;
  /** a homophone was taken for a figure ("too" for two) */
  readonly loose: boolean;
}

export interface Tag {
  readonly key: string;
  /** empty for a bare mark such as `{plural}` */
  readonly value: string;
}

/** Tags of a phrase that counts only where the words around it, or a pause within it, let it. */
export const BOUNDS = [
  'closing',
  'place',
  'first-said',
  'all-said',
  'opens',
  'done-by',
  'counted',
  'ends-breath',
  'unbroken',
] as const;

export type Bound = (typeof BOUNDS)[number];

export interface Island {
  /** the file of the grammar it came from: `sites`, `findings`, … */
  readonly file: string;
  readonly rule: string;
  /** token positions, `to` past the last */
  readonly from: number;
  readonly to: number;
  readonly tags: readonly Tag[];
  readonly slots: readonly FilledSlot[];
  readonly cost: number;
}

/** The value of the first tag with this key, or null. */
export function tagOf({ tags }: Pick<Island, 'tags'>, key: string): string | null {
  for (const tag of tags) if (tag.key === key) return tag.value;
  return null;
}

/** True where the island carries this tag. */
export function hasTag({ tags }: Pick<Island, 'tags'>, key: string, value?: string): boolean {
  for (const tag of tags) if (tag.key === key && (value === undefined || tag.value === value)) return true;
  return false;
}

/** All values of the tags with this key, in the order spoken. */
export const tagsOf = (island: Pick<Island, 'tags'>, key: string): readonly string[] =>
  island.tags.filter((tag) => tag.key === key).map((tag) => tag.value);

/** The number that the grammar calls by this name (`{num:rate}`); the n-th name belongs to the n-th number. */
export function numberOf(island: Island, name: string): number | null {
  const place = tagsOf(island, 'num').indexOf(name);
  return island.slots.filter((slot) => slot.time === null)[place]?.value ?? null;
}
