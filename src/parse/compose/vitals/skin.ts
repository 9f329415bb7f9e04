// The skin's colour, temperature and moisture, those that were said.

import { type Island, tagOf } from '../../islands/island.ts';
import type { Read } from './vital-read.ts';

/** The skin of an island; null where nothing was said of it. */
export function skinOf(island: Island): Read {
  const color = tagOf(island, 'color');
  const temperature = tagOf(island, 'temp');
  const moisture = tagOf(island, 'moisture');
  if (color === null && temperature === null && moisture === null) return null;
  return {
    reading: {
      vital: 'skin',
      value: {
        ...(color === null ? {} : { color }),
        ...(temperature === null ? {} : { temperature }),
        ...(moisture === null ? {} : { moisture }),
      },
    },
  };
}
