// "Can you bend your right knee?" "No.": it cannot be moved as it should.

import { isPaired } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { spanned } from '../../span.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import { type Talk, textOf } from '../talk.ts';
import type { AskedFindings } from './settle.ts';

const MOVES = /^(bend|straighten|flex|lift|raise|turn|rotate)$/;

/** What a "no" to such words settles; null where they are of something else than one limb or joint. */
export function askedToMove(talk: Talk, { pieces }: Clause): AskedFindings | null {
  const verb = pieces.find(({ role }) => role === 'mood');
  if (verb === undefined || !MOVES.test(talk.tokens[verb.to - 1]?.word ?? '')) return null;
  const [phrase, ...others] = phrasesIn(itemsOf(talk, pieces));
  const [site, ...more] = phrase?.sites ?? [];
  if (site === undefined || others.length > 0 || more.length > 0 || phrase?.mine === true) return null;
  if (!isPaired(site.site)) return null;
  const { from, to } = spanned(pieces);
  return {
    about: 'findings',
    findings: [{ finding: 'limited-motion', quality: [], present: false }],
    sites: [site],
    negative: true,
    either: false,
    done: true,
    text: textOf(talk, from, to),
  };
}
