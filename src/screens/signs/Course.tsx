// The course of one measure as a small line; its words are beside it, so that nothing is told by the line alone.

import type { Series } from '../../clinical/index.ts';
import { placed } from './chart-points.ts';

export function Course({ series }: { readonly series: Series }) {
  const points = placed(series.points);
  if (points.length < 2) return null;
  return (
    <figure class="course">
      <svg viewBox="0 0 120 36" role="img" aria-label={`Course: ${series.text}`}>
        <polyline points={points.map(({ x, y }) => `${x},${y}`).join(' ')} />
        {points.map(({ x, y, confirmed }) => (
          <circle key={x} class={confirmed ? 'sure' : 'open'} cx={x} cy={y} r="3" />
        ))}
      </svg>
      <figcaption class="small-print">{series.text}</figcaption>
    </figure>
  );
}
