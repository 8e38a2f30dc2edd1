/** A plane region as a question: does it hold this point? */
export type Region = (x: number, y: number) => boolean;

/** Cells in a row and in a column of the square that is looked at. */
const cells = 700;

/** Area and smallest rectangle of a region, by counting cells and by turning a rectangle in steps of 0.25°. */
export function measure(region: Region, reach: number) {
  const step = (2 * reach) / cells;
  const middles = Array.from({ length: cells }, (_, index) => (index + 0.5) * step - reach);
  let count = 0;
  const edge: [number, number][] = [];
  for (const y of middles) {
    const row = middles.filter((x) => region(x, y));
    count += row.length;
    const [first, last] = [row[0], row.at(-1)];
    if (first !== undefined && last !== undefined) edge.push([first, y], [last, y]);
  }
  const rectangles = Array.from({ length: 360 }, (_, index) => rectangleAt(edge, (index * Math.PI) / 720));
  const smallest = rectangles.reduce((best, next) => (next.area < best.area ? next : best));
  return { area: count * step ** 2, rectangle: smallest };
}

function rectangleAt(points: readonly [number, number][], angle: number) {
  const along = extent(points.map(([x, y]) => x * Math.cos(angle) + y * Math.sin(angle)));
  const across = extent(points.map(([x, y]) => y * Math.cos(angle) - x * Math.sin(angle)));
  return { area: along * across, longer: Math.max(along, across), shorter: Math.min(along, across) };
}

function extent(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
