const namespace = "http://www.w3.org/2000/svg";

function draw(tag: string, attributes: Readonly<Record<string, string | number>>): SVGElement {
  const made = document.createElementNS(namespace, tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, String(value));
  return made;
}

/** An estimate with its interval, as places from 0 to 1 along the picture. */
export interface Mark {
  readonly at: number;
  readonly low: number;
  readonly high: number;
  /** True where the true value may be higher. */
  readonly atLeast?: boolean;
}

const [width, height, edge] = [160, 18, 7];

/** A small picture of one estimate: a line from nothing to everything, the interval on it, the estimate as a dot. */
export function evidencePicture(
  { at, low, high }: Mark,
  ticks: readonly number[],
  label: string,
): SVGElement {
  const x = (place: number) => (edge + Math.min(1, Math.max(0, place)) * (width - 2 * edge)).toFixed(1);
  const y = height / 2;
  const picture = draw("svg", {
    class: "evidence-picture",
    viewBox: `0 0 ${width} ${height}`,
    role: "img",
    "aria-label": label,
  });
  picture.append(
    draw("line", { class: "track", x1: x(0), x2: x(1), y1: y, y2: y }),
    ...ticks.map((tick) => draw("line", { class: "tick", x1: x(tick), x2: x(tick), y1: y - 5, y2: y + 5 })),
    draw("line", { class: "whisker", x1: x(low), x2: x(high), y1: y, y2: y }),
    draw("circle", { cx: x(at), cy: y, r: 5 }),
  );
  return picture;
}

/** Where a length ratio stands between one to one and four to one, by its logarithm. */
export function ratioPlace(ratio: number): number {
  return Math.log(ratio) / Math.log(4);
}
export const ratioTicks = [1, 2, 3, 4].map(ratioPlace);
export const shareTicks = [0, 0.5, 1];
