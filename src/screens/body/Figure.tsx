// One view of the body: each area by the state of its examination in pattern as well as tone, findings as counted marks.

import { useTools, useWorked } from '../frame/tools.ts';
import { type AreaState, areaState, marksAt, STATES } from './area-state.ts';
import { HEIGHT, pointsOf, WIDTH } from './corners.ts';
import { AREAS, type Area, HALF_SILHOUETTE, middleOf, type View } from './outline.ts';
import { MARGIN, TOUCHES } from './touches.ts';
import { ZONES, type Zone } from './zones.ts';

interface Props {
  readonly view: View;
  readonly choose: (zone: Zone) => void;
}

export function Figure({ view, choose }: Props) {
  const { derived } = useTools();
  const { reckoning } = useWorked();
  const { coverage } = reckoning.value;
  const areas = AREAS[view];
  const drawn = new Set(areas.map(({ site }) => site));
  const entries = derived.entries.value;
  const [viewersLeft, viewersRight] = view === 'front' ? ['RIGHT', 'LEFT'] : ['LEFT', 'RIGHT'];
  const half = <path d={HALF_SILHOUETTE} />;
  const other = <g transform={`translate(${WIDTH} 0) scale(-1 1)`}>{half}</g>;
  return (
    <svg
      class="figure"
      viewBox={`${-MARGIN} -4 ${WIDTH + 2 * MARGIN} ${HEIGHT + 20}`}
      role="img"
      aria-labelledby={`figure-${view}`}
    >
      <title id={`figure-${view}`}>
        Outline of the body from the {view}; the list below says the same in words
      </title>
      <defs>
        <clipPath id={`body-${view}`}>
          {half}
          <path d={HALF_SILHOUETTE} transform={`translate(${WIDTH} 0) scale(-1 1)`} />
        </clipPath>
        {STATES.map((state) => (
          <Pattern key={state} state={state} of={view} />
        ))}
      </defs>
      <g clip-path={`url(#body-${view})`}>
        {areas.map((area) => (
          <polygon
            key={`${area.site}-${area.side}`}
            class="area"
            data-state={areaState(area, coverage, drawn)}
            style={{ fill: `url(#${areaState(area, coverage, drawn)}-${view})` }}
            points={pointsOf(area.corners)}
          />
        ))}
      </g>
      <g class="silhouette">
        {half}
        {other}
      </g>
      {areas.map((area) => (
        <Mark key={`${area.site}-${area.side}`} area={area} many={marksAt(area, entries, drawn)} />
      ))}
      <text class="figure-side" x={WIDTH / 2} y={HEIGHT + 12} text-anchor="middle">
        {view.toUpperCase()}
      </text>
      <text class="figure-side" x="-26" y="24">
        {viewersLeft}
      </text>
      <text class="figure-side" x={WIDTH + 26} y="24" text-anchor="end">
        {viewersRight}
      </text>
      {ZONES.map((zone) => {
        const corners = TOUCHES[view][zone.id];
        return corners === undefined ? null : (
          // biome-ignore lint/a11y/noStaticElementInteractions: the list below offers the same to keys and screen readers
          <polygon
            key={zone.id}
            class="touch"
            data-zone={zone.id}
            points={pointsOf(corners)}
            onClick={() => choose(zone)}
          />
        );
      })}
    </svg>
  );
}

function Mark({ area, many }: { readonly area: Area; readonly many: number }) {
  if (many === 0) return null;
  const [x, y] = middleOf(area);
  return (
    <g class="finding-mark" transform={`translate(${x} ${y})`}>
      <path d="M0 -9L9 0L0 9L-9 0Z" />
      <text y="3.6" text-anchor="middle">
        {many}
      </text>
    </g>
  );
}

const INK: Readonly<Record<AreaState, preact.ComponentChildren>> = {
  'not-examined': null,
  touched: <circle class="pattern-ink" cx="3" cy="3" r="0.9" />,
  part: <path class="pattern-line" d="M0 6L6 0" />,
  clear: <path class="pattern-line" d="M0 1.5H6M0 4.5H6" />,
  found: <rect class="pattern-found" width="6" height="6" />,
};

/** The pattern of a state, so that it is told without colour: blank, dots, slants, stripes, solid. Named `state-of`. */
export const Pattern = ({ state, of }: { readonly state: AreaState; readonly of: string }) => (
  <pattern id={`${state}-${of}`} width="6" height="6" patternUnits="userSpaceOnUse">
    <rect class="pattern-ground" width="6" height="6" />
    {INK[state]}
  </pattern>
);
