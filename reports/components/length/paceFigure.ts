import type { Contrast } from "../../../src/estimates/lengthContrast.ts";
import { formatRatio } from "../../../src/findings/format.ts";
import { isFirm } from "../../../src/findings/sentences/ratios.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { LengthData } from "../../../src/publish/pageData.ts";
import type { Choices } from "../choices.ts";
import type { Corpus } from "../corpus.ts";
import { figure } from "../figure.ts";
import { intervalPlot } from "../intervalPlot.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { chosenRates, isKnown, type Known, rateBasis, ratioDomain } from "./rateRows.ts";

/** The ratio in slow, middle and fast stretches of each speaker. */
export function paceFigure(
  corpus: Corpus,
  choices: Choices,
  data: LengthData,
  contrast: Contrast,
): HTMLElement {
  const id = `${contrast}-pace`;
  return live(choices, (widthPx) => {
    const { length } = interfaceText();
    const { pace: words } = length;
    const { question } = words;
    const rows = (chosenRates(corpus, choices, data, contrast)?.bands ?? []).flatMap(({ band, row }) =>
      isKnown(row) ? [{ name: words.bands[band], band, row }] : [],
    );
    const [slow, fast] = [rows.find(({ band }) => band === "slow"), rows.find(({ band }) => band === "fast")];
    if (slow === undefined || fast === undefined)
      return figure({ id, question, finding: length.none, picture: null, numbers: null });
    const apart = slow.row.low > fast.row.high ? "larger" : slow.row.high < fast.row.low ? "smaller" : "open";
    const times = ({ bound, estimate }: Known) => `${bound === null ? "" : "≥ "}${formatRatio(estimate)}`;
    const finding = words.finding(
      contrast,
      rows.map(({ name, row }) => words.part(times(row), name)),
      interfaceText().figures.speakers(slow.row.speakers),
      apart,
    );
    type Row = (typeof rows)[number];
    const number = (name: string, value: (row: Row) => number) => ({
      name,
      value,
      show: (row: Row) => formatRatio(value(row)),
    });
    return figure({
      id,
      question,
      finding,
      picture: intervalPlot(
        rows.map(({ name, row }) => ({
          name,
          ...{ estimate: row.estimate, low: row.low, high: row.high },
          remark: length.tokens(row.long.tokens, row.short.tokens),
          atLeast: row.bound !== null,
          thin: !isFirm(row),
        })),
        {
          ...{ widthPx, label: words.axis, alternative: finding, format: formatRatio },
          domain: ratioDomain(rows.map(({ row }) => row)),
        },
      ),
      basis: rateBasis(
        contrast,
        slow.row,
        rows.map(({ row }) => row),
      ),
      remarks: [words.remark, length.whole[contrast]],
      numbers: numbersTable(id, rows, [
        { name: words.columns.band, value: (row) => row.name },
        number(words.columns.ratio, ({ row }) => row.estimate),
        number(words.columns.low, ({ row }) => row.low),
        number(words.columns.high, ({ row }) => row.high),
        { name: words.columns.long, value: ({ row }) => row.long.tokens },
        { name: words.columns.short, value: ({ row }) => row.short.tokens },
        { name: words.columns.speakers, value: ({ row }) => row.speakers },
      ]),
    });
  });
}
