// Of what a limb check's words are said: the limb's end, a joint by itself, the patient, or some other place.

import type { Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import { saidIn, type Token } from '../../token.ts';
import { hasRole, type Item, phraseOf } from '../sites/item.ts';
import { endOf } from './limb-ends.ts';

// "She is getting cold": the person is, and not the limb in mind.
export function isSomebody(tokens: readonly Token[], { from }: Piece): boolean {
  const said = saidIn(tokens, Math.max(0, from - 4), from);
  return /(^| )(i|he|she|patient|casualty) (is |am |feels |feeling |looks |was |getting |gets |still |very |really |so )*$/.test(
    `${said} `,
  );
}

/** "Cool water on the left hand", "a cold flannel": the thing is cool, and not the limb. */
export const isOfThing = (tokens: readonly Token[], { to }: Piece): boolean =>
  tokens[to - 1]?.pause === '' && THING.test(saidIn(tokens, to, to + 2));

const THING =
  /^((running|tap|river|stream|salt|sea|clean|bottled|wet|damp) )?(water|tap|flannel|flannels|cloth|cloths|towel|towels|compress|pack|packs|air|wind|rain|snow|rock|floor|ground|metal|drink|drinks)\b/;

/** True where the place that follows is no limb's. */
export const isElsewhere = (items: readonly Item[], i: number): boolean => {
  const at = items.findIndex((item, k) => k > i && !hasRole(item, 'small') && !hasRole(item, 'side'));
  const phrase = phraseOf(items[at]);
  return phrase?.led === true && phrase.sites.every(({ site }) => endOf(site) === null);
};

const ENDS: ReadonlySet<string> = new Set([
  'hand',
  'fingers',
  'palm',
  'thumb',
  'index-finger',
  'middle-finger',
  'ring-finger',
  'little-finger',
  'foot',
  'toes',
  'big-toe',
  'little-toe',
  'heel',
]);

export const isEndNamed = (refs: readonly Pick<SiteRef, 'site'>[]): boolean =>
  refs.length > 0 && refs.every(({ site }) => ENDS.has(site));

export const AT_TRUNK: ReadonlySet<Site> = new Set(['hip', 'shoulder', 'clavicle', 'scapula']);

// What may be warm of a swelling or an infection, while nothing is said of the limb's end.
export const WARM_BY_ITSELF: ReadonlySet<Site> = new Set([
  'knee',
  'elbow',
  'thigh',
  'upper-arm',
  'shoulder',
  'hip',
]);
