import { formatCount } from "../../src/findings/format.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { type GridCell, gridNumber, soundHead, thinCell } from "./environmentGrid.ts";

const cellPx = 46;
const leftPx = 92;
const topPx = 34;

function svg(tag: string, attributes: Readonly<Record<string, string | number>>, text = ""): SVGElement {
  const made = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, String(value));
  made.textContent = text;
  return made;
}

function swatch(cell: GridCell, x: number, y: number): SVGElement[] {
  const { row } = cell;
  const thin = row.estimate !== null && row.tokens < thinCell;
  const share = row.estimate ?? row.devoiced / row.tokens;
  const certainty = row.low === null || row.high === null ? 0.6 : Math.max(0.12, 1 - (row.high - row.low));
  const side = 26 * certainty;
  const fill =
    row.estimate === null
      ? "none"
      : `color-mix(in oklab, var(--rate-high) ${(100 * share).toFixed(1)}%, var(--rate-low))`;
  const square = svg("rect", {
    x: x + (cellPx - side) / 2,
    y: y + 15 - side / 2,
    width: side,
    height: side,
    style: `fill: ${fill}${thin ? "; opacity: 0.45" : ""}; stroke: var(--quiet)${row.estimate === null ? "; stroke-dasharray: 2 2" : ""}`,
  });
  const middle = { x: x + cellPx / 2, "text-anchor": "middle" };
  return [
    square,
    svg(
      "text",
      { ...middle, y: y + 40, style: `fill: var(--${thin ? "soft" : "ink"}); font-size: 12px` },
      gridNumber(cell),
    ),
    svg(
      "text",
      { ...middle, y: y + 51, style: "fill: var(--soft); font-size: 9px" },
      formatCount(row.tokens),
    ),
  ];
}

/** The grid of environments as a drawing, to be saved: the page shows it as a table whose cells can be chosen. */
export function gridDrawing(
  cells: readonly GridCell[],
  before: readonly string[],
  after: readonly string[],
): SVGElement {
  const rowPx = 58;
  const width = leftPx + after.length * cellPx;
  const height = topPx + before.length * rowPx + 22;
  const names = "fill: var(--ink); font-size: 14px";
  const key = interfaceText().figure.gridKey;
  return [
    svg("text", { x: 0, y: height - 4, style: "fill: var(--soft); font-size: 11px" }, key),
    svg("text", { x: 0, y: 20, style: "fill: var(--soft); font-size: 10px" }, interfaceText().grid.corner),
    ...after.map((phone, i) =>
      svg(
        "text",
        { x: leftPx + (i + 0.5) * cellPx, y: 24, "text-anchor": "middle", style: names },
        soundHead(phone),
      ),
    ),
    ...before.map((phone, i) =>
      svg(
        "text",
        { x: leftPx - 14, y: topPx + i * rowPx + 20, "text-anchor": "end", style: names },
        soundHead(phone),
      ),
    ),
    ...cells.flatMap((cell) => {
      const [column, row] = [after.indexOf(cell.after), before.indexOf(cell.before)];
      return column < 0 || row < 0 ? [] : swatch(cell, leftPx + column * cellPx, topPx + row * rowPx);
    }),
  ].reduce(
    (drawing, part) => {
      drawing.append(part);
      return drawing;
    },
    svg("svg", { width, height, viewBox: `0 0 ${width} ${height}` }),
  );
}
