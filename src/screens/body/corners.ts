// Shapes in the drawing's own units, by their corners.

export type Corners = readonly (readonly [x: number, y: number])[];

/** The size of the drawing. */
export const WIDTH = 200;
export const HEIGHT = 420;

/** An upright rectangle. */
export const band = (left: number, top: number, right: number, bottom: number): Corners => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

/** A shape by its corners as SVG writes them: "40,70 63,70 64,106". */
export const shape = (points: string): Corners =>
  points.split(' ').map((point) => {
    const [x = 0, y = 0] = point.split(',').map(Number);
    return [x, y] as const;
  });

/** The corners as SVG writes them. */
export const pointsOf = (corners: Corners): string => corners.map((corner) => corner.join(',')).join(' ');

/** The same shape on the other half of the drawing. */
export const mirrored = (corners: Corners): Corners => corners.map(([x, y]) => [WIDTH - x, y] as const);
