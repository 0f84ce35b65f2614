interface Point {
  readonly x: number;
  readonly y: number;
}

const cross = (o: Point, a: Point, b: Point): number => (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);

function chain(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const point of points) {
    for (;;) {
      const [before, last] = kept.slice(-2);
      if (!before || !last || cross(before, last, point) > 0) break;
      kept.pop();
    }
    kept.push(point);
  }
  return kept;
}

/** A tight belt is the hull of its pulleys: its corners, for pulleys drawn as polygons of many corners. */
function hullOf(points: readonly Point[]): Point[] {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  return [...chain(sorted).slice(0, -1), ...chain(sorted.toReversed()).slice(0, -1)];
}

const polygon = (x: number, radius: number, corners: number): Point[] =>
  Array.from({ length: corners }, (_, k) => {
    const angle = (2 * Math.PI * (k + 0.5)) / corners;
    return { x: x + radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });

/** Length of the belt round two pulleys, and of its longest straight, measured on the hull and by no formula of belts. */
export function measuredBelt(
  D1: number,
  D2: number,
  C: number,
  corners = 8000,
): { readonly length: number; readonly span: number } {
  const hull = hullOf([...polygon(0, D1 / 2, corners), ...polygon(C, D2 / 2, corners)]);
  const sides = hull.map((a, k) => {
    const b = hull[(k + 1) % hull.length] ?? a;
    return Math.hypot(b.x - a.x, b.y - a.y);
  });
  return { length: sides.reduce((sum, side) => sum + side, 0), span: Math.max(...sides) };
}

/** The same length as the integral of the support function: the reach of the belt in each direction, summed all round. */
export function supportLength(D1: number, D2: number, C: number, directions = 200_000): number {
  const step = (2 * Math.PI) / directions;
  let length = 0;
  for (let k = 0; k < directions; k++) {
    length += Math.max(D1 / 2, C * Math.cos((k + 0.5) * step) + D2 / 2) * step;
  }
  return length;
}
