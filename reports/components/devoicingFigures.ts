import { devoicingRates, type RateRow } from "../../src/estimates/rates.ts";
import {
  formatAmount,
  formatCount,
  formatPercent,
  joinWords,
  roundPercent,
} from "../../src/findings/format.ts";
import {
  compareRates,
  rateBasis,
  type Subject,
  speakerRatesSentence,
} from "../../src/findings/sentences/rates.ts";
import { soundName } from "../../src/findings/soundNames.ts";
import { isVoiceless, phones } from "../../src/phonology/phones.ts";
import type { Choices } from "./choices.ts";
import { chosenSet } from "./chosenSet.ts";
import type { Corpus } from "./corpus.ts";
import { comparisons, devoicingFilter } from "./devoicingChoices.ts";
import { element } from "./element.ts";
import { environmentGrid, type GridCell, gridLegend } from "./environmentGrid.ts";
import { figure } from "./figure.ts";
import { intervalPlot } from "./intervalPlot.ts";
import { live } from "./live.ts";
import { type NumbersColumn, numbersTable } from "./numbersTable.ts";
import { speakerPlot } from "./speakerPlot.ts";

type Named = { readonly name: string; readonly row: RateRow };

const percentAxis = {
  domain: [0, 100] as const,
  label: "devoiced (% of vowels)",
  format: (value: number) => `${value.toFixed(0)} %`,
};

function rateColumns(first: string): NumbersColumn<Named>[] {
  const share = (pick: (row: RateRow) => number | null) => ({
    value: ({ row }: Named) => pick(row),
    show: ({ row }: Named) => (pick(row) === null ? "–" : formatPercent(pick(row)!)),
  });
  return [
    { name: first, value: ({ name }) => name },
    { name: "rate", ...share((row) => row.estimate) },
    { name: "low", ...share((row) => row.low) },
    { name: "high", ...share((row) => row.high) },
    { name: "level", value: ({ row }) => row.level },
    { name: "devoiced", value: ({ row }) => row.devoiced },
    { name: "vowels", value: ({ row }) => row.tokens },
    { name: "speakers", value: ({ row }) => row.speakers },
    { name: "basis", value: ({ row }) => row.basis },
    { name: "method", value: ({ row }) => row.method },
  ];
}

/** The vowels in the choice as a subject: `the vowels i and ɯ (u)`. */
function subjectOf(choices: Choices): Subject {
  const vowels = choices.several("vowel").map((vowel) => soundName(vowel));
  const plural = vowels.length > 1;
  return { words: `the vowel${plural ? "s" : ""} ${joinWords(vowels)}`, plural };
}

function nameOf(by: string, value: string | null): string {
  if (value === null) return "unknown";
  if (by === "phone") return soundName(value);
  if (by === "before" || by === "after") return soundName(value);
  if (by === "accented") return value === "true" ? "accented" : "not accented";
  if (by === "devoiceableNeighbour") return value === "true" ? "beside another" : "alone";
  return value;
}

const percentRow = ({ name, row }: Named) => ({
  name,
  estimate: row.estimate === null ? null : 100 * row.estimate,
  low: row.low === null ? null : 100 * row.low,
  high: row.high === null ? null : 100 * row.high,
  remark:
    row.estimate === null
      ? `rule: ${formatCount(row.devoiced)} of ${formatCount(row.tokens)}`
      : formatAmount(row.tokens, "vowel"),
});

/** Rates side by side by what the reader compares. */
export function rateFigure(corpus: Corpus, choices: Choices): HTMLElement {
  return live(choices, (widthPx) => {
    const by = choices.get("by") as (typeof comparisons)[number]["value"];
    const rates = devoicingRates(corpus.cells, { filter: devoicingFilter(corpus, choices), by: [by] });
    const rows = rates.rows.map((row) => ({ name: nameOf(by, row.by[by] ?? null), row }));
    const finding = compareRates(rows, subjectOf(choices));
    const label = comparisons.find(({ value }) => value === by)!.label;
    return figure({
      id: "devoicing-rates",
      question: `How often is the vowel devoiced, by ${label}?`,
      finding: rows.length === 0 ? (rates.notes[0] ?? finding) : finding,
      picture:
        rows.length === 0
          ? null
          : intervalPlot(rows.map(percentRow), { ...percentAxis, widthPx, alternative: finding }),
      basis: rateBasis(rows),
      remarks: rows.length === 0 ? rates.notes.slice(1) : rates.notes,
      numbers: rows.length === 0 ? null : numbersTable("devoicing-rates", rows, rateColumns(label)),
    });
  });
}

function gridCells(corpus: Corpus, choices: Choices): GridCell[] {
  const filter = { ...devoicingFilter(corpus, choices, { around: false }), before: "voiceless" };
  const voiceless = devoicingRates(corpus.cells, {
    filter: { ...filter, after: ["voiceless", "pause"] },
    by: ["before", "after"],
  });
  const voiced = devoicingRates(corpus.cells, { filter: { ...filter, after: "voiced" }, by: ["before"] });
  return [
    ...voiceless.rows.map((row) => ({ before: String(row.by.before), after: String(row.by.after), row })),
    ...voiced.rows.map((row) => ({ before: String(row.by.before), after: "voiced", row })),
  ];
}

/** Intervals at most this wide count as enough to rank surroundings. */
const firmWidth = 0.3;

function around({ before, after, row }: GridCell): string {
  return `${soundName(before)} and ${soundName(after)} (${roundPercent(row.estimate ?? 0)})`;
}

function gridFinding(cells: readonly GridCell[]): string {
  if (cells.length === 0) return "No vowel in this cut carries a devoicing mark.";
  if (cells[0]!.row.estimate === null)
    return "What the text rule expects, by the sounds around the vowel: predicted by rule, not heard.";
  const firm = cells
    .filter(({ after, row }) => after !== "voiced" && row.high! - row.low! <= firmWidth)
    .sort((a, b) => b.row.estimate! - a.row.estimate!);
  const [top, bottom] = [firm[0], firm.at(-1)];
  if (top === undefined || bottom === undefined || top === bottom)
    return "Most cells rest on few vowels: their intervals are too wide to rank the surroundings.";
  const doubt =
    top.row.low! > bottom.row.high! ? "" : " Their intervals overlap, so the order is not certain.";
  return `Among the voiceless surroundings with enough vowels, devoicing is most frequent between ${around(top)}, least between ${around(bottom)}.${doubt}`;
}

/** Rates by the sounds before and after; choosing a cell narrows the other pictures to it. */
export function gridFigure(corpus: Corpus, choices: Choices): HTMLElement {
  return live(choices, () => {
    const cells = gridCells(corpus, choices);
    const order = ["cl", ...phones.filter((phone) => phone !== "cl" && phone !== "pause"), "pause", "voiced"];
    const present = (side: "before" | "after") => {
      const names = new Set(cells.map((cell) => cell[side]));
      return order.filter((phone) => names.has(phone) && (side === "after" || isVoiceless(phone)));
    };
    const finding = gridFinding(cells);
    const byRule = cells.some(({ row }) => row.estimate === null);
    const named = cells.map(({ before, after, row }) => ({ name: `${before} – ${after}`, row }));
    const grid = environmentGrid({
      cells,
      before: present("before"),
      after: present("after"),
      chosen: { before: choices.get("before"), after: choices.get("after") },
      onChoose: (before, after) => choices.set({ before, after }),
      label: "Devoicing by the sounds before and after",
    });
    return figure({
      id: "devoicing-environments",
      question: "Between which sounds is the vowel devoiced?",
      finding,
      picture: cells.length === 0 ? null : element("div", {}, gridLegend(byRule), grid),
      remarks:
        cells.length === 0
          ? []
          : [
              "Choose a cell to narrow the other pictures to it. A dot means that the corpus has no such vowel.",
            ],
      numbers:
        cells.length === 0
          ? null
          : numbersTable("devoicing-environments", named, rateColumns("before – after")),
    });
  });
}

/** Every speaker's rate in the chosen cut. */
export function speakerFigure(corpus: Corpus, choices: Choices): HTMLElement {
  return live(choices, (widthPx) => {
    const filter = devoicingFilter(corpus, choices);
    const { rows } = devoicingRates(corpus.cells, { filter, by: ["speaker"] });
    const [overall] = devoicingRates(corpus.cells, { filter }).rows;
    const named = rows.map((row) => ({ name: String(row.by.speaker), row }));
    const measured = named.filter(({ row }) => row.estimate !== null);
    const question = "How much do speakers differ?";
    const id = "devoicing-speakers";
    if (overall === undefined || measured.length < 2) {
      const alone =
        rows.length === 1
          ? "There is one speaker in this cut: nothing can be said about how speakers differ."
          : "";
      const rule = chosenSet(corpus, choices.get("set")).labels.devoicingBasis === "predicted";
      const finding = rule
        ? "The rule is the same for every speaker, so it cannot show how they differ."
        : alone || "No speaker’s vowels carry a devoicing mark here.";
      return figure({ id, question, finding, picture: null, numbers: null });
    }
    const shares = measured.map(({ row }) => row.estimate!);
    const finding = speakerRatesSentence(shares, overall);
    const dots = measured.map(({ name, row }) => ({
      speaker: name,
      value: 100 * row.estimate!,
      tokens: row.tokens,
    }));
    const band =
      overall.estimate === null
        ? null
        : { estimate: 100 * overall.estimate, low: 100 * overall.low!, high: 100 * overall.high! };
    return figure({
      id,
      question,
      finding,
      picture: speakerPlot(dots, { ...percentAxis, widthPx, overall: band, alternative: finding }),
      remarks: [
        "Each dot is a speaker, larger with more vowels; the band is the interval over all of them. Few vowels alone make dots scatter.",
      ],
      numbers: numbersTable(id, named, rateColumns("speaker")),
    });
  });
}
