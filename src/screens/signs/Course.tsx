// The course of one vital sign as small lines on one scale; its words stand beside it, so that nothing is told by a line alone.

import type { Series } from '../../clinical/index.ts';
import { HEIGHT, placed, WIDTH } from './chart-points.ts';

export function Course({ series }: { readonly series: readonly Series[] }) {
  const drawn = series.filter(({ points }) => points.length > 1);
  if (drawn.length === 0) return null;
  const lines = placed(drawn.map(({ points }) => points));
  return (
    <svg
      class="course"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`Course: ${drawn.map(({ text }) => text).join('; ')}`}
    >
      {lines.map((points, index) => (
        <g key={drawn[index]?.measure}>
          <polyline points={points.map(({ x, y }) => `${x},${y}`).join(' ')} />
          {points.map(({ x, y, confirmed }) => (
            <circle key={x} class={confirmed ? 'sure' : 'open'} cx={x} cy={y} r="3" />
          ))}
        </g>
      ))}
    </svg>
  );
}
