// The site in mind, large: what the next words without a place of their own will be taken to mean.

import type { Context } from '../../parse/index.ts';
import { isPaired } from '../../terms/index.ts';
import { siteName } from '../../timeline/index.ts';
import { useTools } from '../frame/tools.ts';

type SiteRef = Context['sites'][number];

const sideWord = ({ site, side }: SiteRef): string | null =>
  side === null ? (isPaired(site) ? 'SIDE NOT SAID' : null) : side.toUpperCase();

export function SiteInMind() {
  const { desk } = useTools();
  const sites = desk.record.value?.exam.context.sites ?? [];
  return (
    <p class="site-in-mind">
      <span class="site-label">Site in mind</span>{' '}
      {sites.length === 0 ? (
        <b class="site-none">none yet</b>
      ) : (
        sites.map((ref, index) => <Named key={`${ref.site}-${ref.side}`} of={ref} first={index === 0} />)
      )}
    </p>
  );
}

function Named({ of, first }: { readonly of: SiteRef; readonly first: boolean }) {
  const side = sideWord(of);
  const assumed = of.sideKnown === 'carried' || of.sideKnown === 'inferred';
  return (
    <b class="site-name">
      {!first && ' and '}
      {side !== null && (
        <span class={`side side-${of.side ?? 'open'}`}>
          {side}
          {assumed && <span class="side-assumed"> (side not spoken)</span>}
        </span>
      )}
      {side !== null && ' '}
      {siteName(of.site)}
      {of.level !== null && ` ${of.level.replace('-', ' ')}`}
    </b>
  );
}
