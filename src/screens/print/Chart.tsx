// A sign's course in black and white: a mark for each reading with its number and time; hollow marks are unconfirmed.

import type { VitalChart } from '../../handoff/index.ts';

const SIZE = { width: 300, height: 110, left: 26, right: 22, top: 16, bottom: 16 } as const;
/** Half the width of a mark. */
const MARK = 2.6;

export function Chart({ chart: { name, points, least, most } }: { readonly chart: VitalChart }) {
  const [from, to] = [points[0]?.at ?? 0, points.at(-1)?.at ?? 1];
  const x = (at: number): number =>
    SIZE.left + (to === from ? 0.5 : (at - from) / (to - from)) * (SIZE.width - SIZE.left - SIZE.right);
  const y = (value: number): number =>
    SIZE.height - SIZE.bottom - ((value - least) / (most - least)) * (SIZE.height - SIZE.top - SIZE.bottom);
  const line = points.map(({ at, value }) => `${x(at).toFixed(1)},${y(value).toFixed(1)}`).join(' ');
  return (
    <figure>
      <figcaption>{name}</figcaption>
      <svg viewBox={`0 0 ${SIZE.width} ${SIZE.height}`} role="img" aria-label={name}>
        <line
          class="axis"
          x1={0}
          x2={SIZE.width}
          y1={SIZE.height - SIZE.bottom + 4}
          y2={SIZE.height - SIZE.bottom + 4}
        />
        {[least, most].map((value) => (
          <text key={value} class="scale" x={2} y={y(value) + 3}>
            {value}
          </text>
        ))}
        <polyline class="course" points={line} />
        {points.map(({ at, time, value, low, confirmed }) => (
          <g key={`${at}-${value}`} class={confirmed ? 'sure' : 'unsure'}>
            {low !== undefined && (
              <>
                <line class="span" x1={x(at)} x2={x(at)} y1={y(value)} y2={y(low)} />
                <text class="value" x={x(at) + 4} y={y(low) + 3}>
                  {low}
                </text>
              </>
            )}
            <rect x={x(at) - MARK} y={y(value) - MARK} width={2 * MARK} height={2 * MARK} />
            <text class="value" x={x(at) + 4} y={y(value) - 4}>
              {value}
            </text>
            <text class="time" x={Math.max(0, x(at) - 10)} y={SIZE.height - 2}>
              {time}
            </text>
          </g>
        ))}
      </svg>
    </figure>
  );
}
