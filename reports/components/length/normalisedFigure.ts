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
import { soundOrder } from "../ratioColumns.ts";
import { valueName } from "../valueName.ts";
import { chosenRates, isKnown, type Known, rateBasis, ratioDomain } from "./rateRows.ts";

interface Pair {
  readonly name: string;
  readonly phone: string | null;
  readonly raw: Known;
  readonly perMora: Known;
}

/** Ratios closer than this share are alike. */
const alike = 0.05;

function verdictOf({ raw, perMora }: Pair): "alike" | "smaller" | "larger" {
  const change = perMora.estimate / raw.estimate - 1;
  if (Math.abs(change) < alike) return "alike";
  return change < 0 ? "smaller" : "larger";
}

/** Ratios of durations beside ratios of durations relative to the mora of their stretch. */
export function normalisedFigure(
  corpus: Corpus,
  choices: Choices,
  data: LengthData,
  contrast: Contrast,
): HTMLElement {
  const id = `${contrast}-per-mora`;
  return live(choices, (widthPx) => {
    const { length, figures } = interfaceText();
    const { normalised: words } = length;
    const { question } = words;
    const rates = chosenRates(corpus, choices, data, contrast);
    const pairs = (rates?.raw ?? []).flatMap((raw): Pair[] => {
      const phone = raw.by.phone ?? null;
      const perMora = rates!.perMora.find((row) => (row.by.phone ?? null) === phone);
      if (perMora === undefined || !isKnown(raw) || !isKnown(perMora)) return [];
      return [{ name: phone === null ? words.all : valueName("phone", phone), phone, raw, perMora }];
    });
    const overall = pairs.find(({ phone }) => phone === null);
    if (overall === undefined)
      return figure({ id, question, finding: length.none, picture: null, numbers: null });
    const each = pairs
      .filter(({ phone }) => phone !== null)
      .sort((a, b) => soundOrder.indexOf(a.phone!) - soundOrder.indexOf(b.phone!));
    const shown = [overall, ...each];
    const { raw, perMora } = overall;
    const bounds = figures.interval(corpus.level, formatRatio(perMora.low), formatRatio(perMora.high));
    const times = (row: Known) => `${row.bound === null ? "" : "≥ "}${formatRatio(row.estimate)}`;
    const finding = words.finding(
      ...([contrast, times(raw), times(perMora), bounds] as const),
      ...([figures.speakers(raw.speakers), verdictOf(overall)] as const),
    );
    const firm = shown.filter((pair) => isFirm(pair.raw));
    const number = (name: string, value: (pair: Pair) => number) => ({
      name,
      value,
      show: (pair: Pair) => formatRatio(value(pair)),
    });
    return figure({
      id,
      question,
      finding,
      picture: intervalPlot(
        shown.map((pair) => ({
          name: pair.name,
          ...{ estimate: pair.raw.estimate, low: pair.raw.low, high: pair.raw.high },
          remark: length.tokens(pair.raw.long.tokens, pair.raw.short.tokens),
          atLeast: pair.raw.bound !== null,
          thin: !isFirm(pair.raw),
          second: pair.perMora,
        })),
        {
          ...{ widthPx, label: words.axis, alternative: finding, format: formatRatio },
          domain: ratioDomain((firm.length > 0 ? firm : shown).flatMap((pair) => [pair.raw, pair.perMora])),
        },
      ),
      basis: rateBasis(contrast, raw, [raw]),
      remarks: [
        words.morae(
          formatRatio(perMora.short.geometricMeanMs / 1000),
          formatRatio(perMora.long.geometricMeanMs / 1000),
        ),
        words.remark,
        length.whole[contrast],
      ],
      numbers: numbersTable(id, shown, [
        { name: words.columns.sound, value: (pair) => pair.name },
        number(words.columns.raw, (pair) => pair.raw.estimate),
        number(words.columns.low, (pair) => pair.raw.low),
        number(words.columns.high, (pair) => pair.raw.high),
        number(words.columns.perMora, (pair) => pair.perMora.estimate),
        number(words.columns.perLow, (pair) => pair.perMora.low),
        number(words.columns.perHigh, (pair) => pair.perMora.high),
        { name: words.columns.long, value: (pair) => pair.raw.long.tokens },
        { name: words.columns.short, value: (pair) => pair.raw.short.tokens },
        { name: words.columns.speakers, value: (pair) => pair.raw.speakers },
      ]),
    });
  });
}
