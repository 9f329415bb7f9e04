// A press counts only for what the thumb was aimed at: where a list moved under it, the press is refused and said so.

export interface Spot {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export type Spots = ReadonlyMap<string, Spot>;

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** How long a thumb is on its way, ms: a list that moved less than this before a press moved under it. Our choice, no source. */
export const ON_ITS_WAY = 700;

const within = ({ left, top, right, bottom }: Spot, { x, y }: Point): boolean =>
  x >= left && x <= right && y >= top && y <= bottom;

const same = (a: Spot, b: Spot | undefined): boolean =>
  b !== undefined && Math.abs(a.top - b.top) < 1 && Math.abs(a.left - b.left) < 1;

export interface Aim {
  /** the list is being drawn again; where its buttons stand then is not known before it is */
  readonly changing: () => void;
  /** where every button stands after that */
  readonly drawn: (spots: Spots, at: number) => void;
  /** true where the thumb was aimed at another button than the one it met */
  readonly missed: (pressed: string, point: Point, at: number) => boolean;
}

/** Remembers where the buttons of one list stood before it last moved; times in ms of one clock. */
export function createAim(): Aim {
  let now: Spots = new Map();
  let before: Spots = new Map();
  let movedAt = Number.NEGATIVE_INFINITY;
  let isChanging = false;
  return {
    changing: () => {
      isChanging = true;
    },
    drawn: (spots, at) => {
      isChanging = false;
      const moved = [...now].some(([name, spot]) => !same(spot, spots.get(name)));
      // Several moves in a row are one: what counts is where things stood when the thumb set out.
      if (moved && at - movedAt > ON_ITS_WAY) before = now;
      if (moved) movedAt = at;
      now = spots;
    },
    missed: (pressed, point, at) => {
      const isMoving = at - movedAt <= ON_ITS_WAY;
      if (!isMoving && !isChanging) return false;
      const aimed = [...(isMoving ? before : now)].find(([, spot]) => within(spot, point));
      return aimed !== undefined && aimed[0] !== pressed;
    },
  };
}
