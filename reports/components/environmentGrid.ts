import { formatAmount, formatCount, percentRange, roundPercent } from "../../src/findings/format.ts";
import type { EnvironmentRate } from "../../src/findings/sentences/environments.ts";
import { ipaOf, kanaOf } from "../../src/findings/soundNames.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { element } from "./element.ts";

export type GridCell = EnvironmentRate;

export interface EnvironmentGridOptions {
  readonly cells: readonly GridCell[];
  readonly before: readonly string[];
  readonly after: readonly string[];
  readonly chosen: { readonly before: string; readonly after: string };
  readonly onChoose: (before: string, after: string) => void;
  readonly label: string;
}

/** With fewer vowels than this a share of them says little: the vowels themselves are counted out instead. */
export const thinCell = 10;

/** "2/3" where a percentage would promise more than three vowels can tell. */
export function gridNumber({ row }: GridCell): string {
  if (row.estimate === null) return formatCount(row.devoiced);
  return row.tokens < thinCell
    ? `${formatCount(row.devoiced)}/${formatCount(row.tokens)}`
    : Math.round(100 * row.estimate).toString();
}

/** A sound as it heads a row or a column. */
export function soundHead(phone: string): string {
  return phone === "voiced" ? interfaceText().grid.voiced : ipaOf(phone);
}

function heading(phone: string): HTMLElement {
  if (phone === "voiced" || phone === "pause") return element("span", { class: "word" }, soundHead(phone));
  const ipa = element("span", { class: "ipa" }, ipaOf(phone));
  const kana = kanaOf(phone);
  return element("span", {}, ipa, kana !== "" && phone !== "cl" && element("small", { lang: "ja" }, kana));
}

function spoken(text: string): HTMLElement {
  return element("span", { class: "spoken" }, text);
}

function where({ before, after }: GridCell): string {
  const words = interfaceText().grid;
  return words.where(ipaOf(before), after === "voiced" ? words.aVoicedSound : ipaOf(after));
}

/** The two numbers of a cell, with the words around them that a screen reader needs. */
function cellText(cell: GridCell): HTMLElement[] {
  const words = interfaceText().grid;
  const { row } = cell;
  const share = element("span", { class: "share" });
  const tokens = element("span", { class: "count" }, formatCount(row.tokens));
  share.append(gridNumber(cell));
  if (row.estimate === null) {
    return [spoken(where(cell)), share, spoken(words.byRule), tokens, spoken(words.vowels)];
  }
  const interval = percentRange(row.low ?? 0, row.high ?? 1);
  const rest = words.rest(row.tokens === 1, formatAmount(row.speakers, "speaker"));
  const said = words.devoiced(interval, row.tokens < thinCell);
  return [spoken(where(cell)), share, spoken(said), tokens, spoken(rest)];
}

/** The swatch's side grows with certainty: a rate that could be anything between none and all leaves next to nothing. */
function swatch({ row }: GridCell): HTMLElement {
  const share = row.estimate ?? row.devoiced / row.tokens;
  const certainty = row.low === null || row.high === null ? 0.6 : Math.max(0.12, 1 - (row.high - row.low));
  const style = `--share:${(100 * share).toFixed(1)}%;--certainty:${certainty.toFixed(3)}`;
  return element("span", { class: row.estimate === null ? "swatch by-rule" : "swatch", style });
}

function titleOf({ row }: GridCell): string {
  const { grid } = interfaceText();
  const { corrected } = row;
  const counted = grid.interval(percentRange(row.low ?? 0, row.high ?? 1));
  return corrected === null
    ? counted
    : `${counted}; ${grid.corrected(roundPercent(corrected.estimate), percentRange(corrected.low, corrected.high))}`;
}

function button(cell: GridCell, options: EnvironmentGridOptions): HTMLElement {
  const words = interfaceText().grid;
  const { before, after } = cell;
  const { low, high } = cell.row;
  const chosen = options.chosen.before === before && options.chosen.after === after;
  return element(
    "button",
    {
      type: "button",
      class: cell.row.estimate !== null && cell.row.tokens < thinCell ? "thin" : "",
      "aria-pressed": chosen ? "true" : "false",
      "data-key": `cell-${before}-${after}`,
      title: low === null || high === null ? words.predicted : titleOf(cell),
      click: () => options.onChoose(before, after),
    },
    swatch(cell),
    ...cellText(cell),
  );
}

/** Rates by the sounds before (rows) and after (columns): a table whose cells can be chosen, so that keys and readers get along with it. */
export function environmentGrid(options: EnvironmentGridOptions): HTMLElement {
  const cellAt = new Map(options.cells.map((cell) => [`${cell.before} ${cell.after}`, cell]));
  const head = options.after.map((phone) => element("th", { scope: "col" }, heading(phone)));
  const body = options.before.map((before) => {
    const cells = options.after.map((after) => {
      const cell = cellAt.get(`${before} ${after}`);
      return element(
        "td",
        {},
        cell === undefined ? element("span", { class: "none" }, "·") : button(cell, options),
      );
    });
    return element("tr", {}, element("th", { scope: "row" }, heading(before)), ...cells);
  });
  const corner = element("td", { class: "corner" }, element("span", {}, interfaceText().grid.corner));
  return element(
    "div",
    { class: "scroll grid", role: "region", "aria-label": options.label, tabindex: 0 },
    element(
      "table",
      {},
      element("thead", {}, element("tr", {}, corner, ...head)),
      element("tbody", {}, ...body),
    ),
  );
}

/** What colour and size of the swatches mean. */
export function gridLegend(byRule: boolean): HTMLElement {
  if (byRule) {
    return element("p", { class: "legend" }, interfaceText().grid.legendByRule);
  }
  const { legend } = interfaceText().grid;
  const step = (share: number) =>
    element("span", { class: "swatch", style: `--share:${share}%;--certainty:0.85` });
  const size = (certainty: number) =>
    element("span", { class: "swatch", style: `--share:70%;--certainty:${certainty}` });
  return element(
    "p",
    { class: "legend" },
    element("span", {}, legend.from),
    ...[0, 25, 50, 75, 100].map(step),
    element("span", {}, legend.to),
    element("span", { class: "gap" }, legend.wide),
    ...[0.2, 0.5, 0.9].map(size),
    element("span", {}, legend.narrow(thinCell)),
  );
}
