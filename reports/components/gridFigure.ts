import { differenceBetween } from "../../src/estimates/differenceBetween.ts";
import { devoicingRates } from "../../src/estimates/rates.ts";
import { environmentsSentence } from "../../src/findings/sentences/environments.ts";
import { rateBasis } from "../../src/findings/sentences/rates.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { isVoiceless, phones } from "../../src/phonology/phones.ts";
import { ratesCommand } from "../../src/publish/terminalCommand.ts";
import type { Choices } from "./choices.ts";
import type { Corpus } from "./corpus.ts";
import { rateOptions } from "./devoicing/corrected.ts";
import { devoicingFilter } from "./devoicingChoices.ts";
import { element } from "./element.ts";
import { environmentGrid, type GridCell, gridLegend } from "./environmentGrid.ts";
import { figure } from "./figure.ts";
import { gridDrawing } from "./gridDrawing.ts";
import { live } from "./live.ts";
import { numbersTable } from "./numbersTable.ts";
import { rateColumns } from "./rateColumns.ts";

/** Each voiceless sound and the pause after the vowel by itself, voiced ones together. */
function gridCuts(corpus: Corpus, choices: Choices) {
  const filter = { ...devoicingFilter(corpus, choices, { around: false }), before: "voiceless" };
  return {
    voiceless: { filter: { ...filter, after: ["voiceless", "pause"] }, by: ["before", "after"] },
    voiced: { filter: { ...filter, after: "voiced" }, by: ["before"] },
  } as const;
}

function gridCells(corpus: Corpus, cuts: ReturnType<typeof gridCuts>): GridCell[] {
  const options = rateOptions(corpus);
  const voiceless = devoicingRates(corpus.cells, { ...options, ...cuts.voiceless });
  const voiced = devoicingRates(corpus.cells, { ...options, ...cuts.voiced });
  return [
    ...voiceless.rows.map((row) => ({ before: String(row.by.before), after: String(row.by.after), row })),
    ...voiced.rows.map((row) => ({ before: String(row.by.before), after: "voiced", row })),
  ];
}

/** Rates by the sounds before and after; choosing a cell narrows the other pictures to it. */
export function gridFigure(corpus: Corpus, choices: Choices): HTMLElement {
  return live(choices, () => {
    const words = interfaceText().grid;
    const cuts = gridCuts(corpus, choices);
    const cells = gridCells(corpus, cuts);
    const order = ["cl", ...phones.filter((phone) => phone !== "cl" && phone !== "pause"), "pause", "voiced"];
    const present = (side: "before" | "after") => {
      const names = new Set(cells.map((cell) => cell[side]));
      return order.filter((phone) => names.has(phone) && (side === "after" || isVoiceless(phone)));
    };
    const after = ["voiceless", "pause", "voiced"];
    const [overall] = devoicingRates(corpus.cells, {
      ...rateOptions(corpus),
      filter: { ...cuts.voiced.filter, after },
    }).rows;
    const finding = environmentsSentence(cells, (a, b, level) =>
      differenceBetween(corpus.cells, { ...cuts.voiceless, level }, a, b),
    );
    const corrected = cells.some(({ row }) => row.corrected !== null);
    const byRule = cells.some(({ row }) => row.estimate === null);
    const named = cells.map(({ before, after, row }) => ({ name: `${before} – ${after}`, row }));
    const grid = environmentGrid({
      cells,
      before: present("before"),
      after: present("after"),
      chosen: { before: choices.get("before"), after: choices.get("after") },
      onChoose: (before, after) => choices.set({ before, after }),
      label: words.label,
    });
    return figure({
      id: "devoicing-environments",
      question: words.question,
      unused: ["before", "after", "by"],
      finding,
      picture: cells.length === 0 ? null : element("div", {}, gridLegend(byRule), grid),
      drawing: () => gridDrawing(cells, present("before"), present("after")),
      basis: rateBasis(overall === undefined ? [] : [{ name: "", row: overall }]),
      remarks: [
        ...(cells.length === 0 ? [] : [words.remark]),
        ...(corrected ? [interfaceText().devoicing.corrected.inTable] : []),
      ],
      commands: [cuts.voiceless, cuts.voiced].map(({ filter, by }) => ratesCommand(filter, by, corpus.level)),
      numbers:
        cells.length === 0
          ? null
          : numbersTable("devoicing-environments", named, rateColumns(words.column, corrected)),
    });
  });
}
