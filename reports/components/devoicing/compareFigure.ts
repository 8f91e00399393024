import { filterMask } from "../../../src/estimates/filter.ts";
import { mainBasisFilter } from "../../../src/estimates/mainBasisFilter.ts";
import { compareRates } from "../../../src/estimates/rateContrasts.ts";
import { devoicingRates } from "../../../src/estimates/rates.ts";
import { formatPercent, roundPercent } from "../../../src/findings/format.ts";
import { differenceBasis } from "../../../src/findings/sentences/differenceBasis.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { Choices } from "../choices.ts";
import { chosenSet } from "../chosenSet.ts";
import type { Corpus } from "../corpus.ts";
import { element } from "../element.ts";
import { figure } from "../figure.ts";
import { type IntervalRow, intervalPlot } from "../intervalPlot.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { correctedPercent, rateOptions } from "./corrected.ts";
import { errorRemarks } from "./errorRemarks.ts";
import { cutFilter, cutWords, secondName } from "./secondCut.ts";

const signed = (share: number) => `${share < 0 ? "−" : "+"}${Math.abs(100 * share).toFixed(1)}`;

/** Marked vowels that both filters hold. */
function sharedVowels({ cells }: Corpus, a: Uint8Array, b: Uint8Array): number {
  let shared = 0;
  for (let i = 0; i < cells.size; i++) if (a[i] === 1 && b[i] === 1) shared += cells.marked[i]!;
  return shared;
}

/** Two cuts of the corpus side by side, with their difference. */
export function compareFigure(corpus: Corpus, choices: Choices): HTMLElement {
  const id = "devoicing-two-cuts";
  return live(choices, (widthPx) => {
    const { devoicing, figures } = interfaceText();
    const { compare: words } = devoicing;
    const { dataset, labelSet } = chosenSet(corpus, choices.get("set"));
    const [first, second] = [(field: string) => field, secondName].map((nameOf) => ({
      filter: {
        ...{ dataset, labelSet, ...cutFilter(choices, nameOf) },
        ...mainBasisFilter(corpus.cells, dataset, labelSet).filter,
      },
      text: cutWords(choices, nameOf, words.field).join(words.between),
    })) as [{ filter: object; text: string }, { filter: object; text: string }];
    const { question } = words;
    const cuts = [words.cut(words.first, first.text), words.cut(words.second, second.text)];
    const empty = (finding: string) =>
      figure({ id, question, finding, picture: null, filter: cuts.join(" "), remarks: cuts, numbers: null });
    if (JSON.stringify(first.filter) === JSON.stringify(second.filter)) return empty(words.same);
    const options = rateOptions(corpus);
    const [found] = compareRates(corpus.cells, first.filter, second.filter, corpus.level).rows;
    const rates = [first, second].map(
      ({ filter }) => devoicingRates(corpus.cells, { ...options, filter }).rows[0],
    );
    const [one, other] = rates;
    if (one?.scope === "rule" || other?.scope === "rule") return empty(words.rule);
    if (found === undefined || one?.estimate == null || other?.estimate == null) return empty(words.none);
    const bounds = figures.interval(corpus.level, signed(found.low), signed(found.high));
    const verdict = found.low > 0 ? "more" : found.high < 0 ? "less" : "open";
    const finding = words.finding(
      ...([roundPercent(one.estimate), roundPercent(other.estimate)] as const),
      ...([signed(found.difference), bounds, verdict] as const),
    );
    const shared = sharedVowels(
      corpus,
      filterMask(corpus.cells, first.filter),
      filterMask(corpus.cells, second.filter),
    );
    const rateRow = (name: string, row: typeof one): IntervalRow => ({
      name,
      ...{ estimate: 100 * row.estimate!, low: 100 * row.low!, high: 100 * row.high! },
      remark: words.tokens(row.tokens),
      second: correctedPercent(row),
    });
    const reach = 20 * Math.ceil(Math.max(0.2, Math.abs(found.low), Math.abs(found.high)) * 5);
    const difference: IntervalRow = {
      ...{ name: words.row, remark: "" },
      ...{ estimate: 100 * found.difference, low: 100 * found.low, high: 100 * found.high },
    };
    const told = [
      { name: words.first, row: one },
      { name: words.second, row: other },
    ];
    const percent = (value: number) => `${value.toFixed(0)} %`;
    const rows = [
      { name: words.first, rate: one.estimate, low: one.low!, high: one.high!, tokens: one.tokens },
      { name: words.second, rate: other.estimate, low: other.low!, high: other.high!, tokens: other.tokens },
      { name: words.row, rate: found.difference, low: found.low, high: found.high, tokens: null },
    ];
    return figure({
      id,
      question,
      filter: cuts.join(" "),
      finding,
      picture: element(
        "div",
        {},
        intervalPlot([rateRow(words.first, one), rateRow(words.second, other)], {
          ...{ widthPx, domain: [0, 100], label: words.rates, alternative: finding, format: percent },
        }),
        intervalPlot([difference], {
          ...{ widthPx, domain: [-Math.min(100, reach), Math.min(100, reach)], label: words.difference },
          ...{ alternative: bounds, format: (value) => signed(value / 100), rule: 0 },
        }),
      ),
      basis: differenceBasis(found, [one, other]),
      remarks: [
        ...errorRemarks(
          corpus.error,
          told,
          told.some(({ row }) => row.corrected !== null),
        ),
        ...cuts,
        ...(shared > 0 ? [words.shared(shared)] : []),
      ],
      numbers: numbersTable(id, rows, [
        { name: words.columns.what, value: (row) => row.name },
        { name: words.columns.rate, value: (row) => row.rate, show: (row) => formatPercent(row.rate) },
        { name: words.columns.low, value: (row) => row.low, show: (row) => formatPercent(row.low) },
        { name: words.columns.high, value: (row) => row.high, show: (row) => formatPercent(row.high) },
        { name: words.columns.n, value: (row) => row.tokens },
      ]),
    });
  });
}
