import { cutOffSweep, type SweepFilter } from "../../../src/estimates/samples/cutOffSweep.ts";
import { formatPercent, percentRange, roundPercent } from "../../../src/findings/format.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { ProbabilityData } from "../../../src/publish/pageData.ts";
import type { Choices } from "../choices.ts";
import { chosenSet } from "../chosenSet.ts";
import { type Corpus, ofSet } from "../corpus.ts";
import { figure } from "../figure.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { sweepPlot } from "./sweepPlot.ts";

const usual = 0.5;
const [lax, strict] = [0.2, 0.8];
/** Differences between lax and strict that hardly matter, and that matter a little. */
const [hardly, some] = [0.03, 0.1];

/** The chosen cut as far as the probabilities tell it. */
function sweepFilter(choices: Choices): SweepFilter {
  const named = (["before", "after", "position", "speaker"] as const).map((name) => [
    name,
    choices.get(name),
  ]);
  const asked = named.filter(([, value]) => value !== "any");
  return { phone: choices.several("vowel").join(","), ...Object.fromEntries(asked) };
}

/** The rate of the chosen cut at every cut-off of the probability of devoicing. */
export function sweepFigure(corpus: Corpus, choices: Choices, { cells }: ProbabilityData): HTMLElement {
  const id = "devoicing-cut-off";
  return live(choices, (widthPx) => {
    const { devoicing, figures } = interfaceText();
    const { sweep: words } = devoicing;
    const { question } = words;
    const own = ofSet(cells, chosenSet(corpus, choices.get("set")))?.cells;
    const long = choices.get("length") === "long";
    const sweep = own === undefined || long ? null : cutOffSweep(own, sweepFilter(choices), corpus.level);
    if (own === undefined || sweep === null) {
      const known = own !== undefined && own.tokens.length > 0;
      return figure({ id, question, finding: known ? words.long : words.none, picture: null, numbers: null });
    }
    const at = (cutOff: number) => sweep.rates.find((rate) => Math.abs(rate.cutOff - cutOff) < 1e-9)!;
    const [middle, low, high] = [at(usual), at(lax), at(strict)];
    const spread = low.estimate - high.estimate;
    const finding = words.finding(
      roundPercent(middle.estimate),
      `${Math.round(100 * corpus.level)}\u00a0% interval ${percentRange(middle.low, middle.high)}`,
      ...([roundPercent(low.estimate), roundPercent(high.estimate)] as const),
      spread < hardly ? "hardly" : spread < some ? "some" : "much",
    );
    return figure({
      id,
      question,
      unused: ["by"],
      finding,
      picture: sweepPlot(sweep.rates, {
        ...{ widthPx, usual, alternative: finding },
        labels: { x: words.axisX, y: words.axisY, usual: words.usual },
      }),
      basis: {
        counts: words.counts(sweep.tokens, figures.speakers(sweep.speakers)),
        method: null,
        warnings: [],
      },
      remarks: [words.remark],
      numbers: numbersTable(id, sweep.rates, [
        { name: words.columns.cutOff, value: (row) => row.cutOff },
        {
          name: words.columns.rate,
          value: (row) => row.estimate,
          show: (row) => formatPercent(row.estimate),
        },
        { name: words.columns.low, value: (row) => row.low, show: (row) => formatPercent(row.low) },
        { name: words.columns.high, value: (row) => row.high, show: (row) => formatPercent(row.high) },
        { name: words.columns.devoiced, value: (row) => row.devoiced },
        { name: words.columns.n, value: () => sweep.tokens },
      ]),
    });
  });
}
