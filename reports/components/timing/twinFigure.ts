import type { DevoicedMora } from "../../../src/estimates/timing/devoicedMora.ts";
import { formatRatio } from "../../../src/findings/format.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { Choices } from "../choices.ts";
import { chosenSet } from "../chosenSet.ts";
import { figure } from "../figure.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { chosenTiming, type TimingPage } from "./timingChoices.ts";
import { twinPlot } from "./twinPlot.ts";
import { rowOf, type TwinRow, twinRows } from "./twinRows.ts";

const mostMorae = 12;

function findingOf(ratio: DevoicedMora, level: number): string {
  const { twins } = interfaceText().timing;
  const { interval, speakers } = interfaceText().figures;
  const bounds = interval(level, formatRatio(ratio.low), formatRatio(ratio.high));
  const [estimate, who] = [formatRatio(ratio.estimate), speakers(ratio.speakers)];
  if (ratio.high < 0.7) return twins.muchShorter(estimate, bounds, who);
  return twins.finding(estimate, bounds, who, ratio.high < 1 ? "shorter" : ratio.low > 1 ? "longer" : "open");
}

/** Morae with a whispered vowel against the same morae voiced. */
export function twinFigure(page: TimingPage, choices: Choices): HTMLElement {
  const id = "timing-twins";
  return live(choices, (widthPx) => {
    const { timing: words, figures } = interfaceText();
    const { twins } = words;
    const chosen = chosenTiming(page, choices);
    const question = twins.question;
    const found = chosen?.timing.devoicedMora;
    if (chosen === null || found?.found == null || chosen.twins.length === 0) {
      const finding = found?.reason == null ? figures.noAnswers : figures.cannotTell(found.reason);
      return figure({ id, question, finding, picture: null, numbers: null });
    }
    const { level } = chosen.timing;
    const ratio = found.found;
    const rows = twinRows(chosen.twins, level);
    const overall: TwinRow = { ...rowOf(chosen.twins, level), name: twins.all };
    const finding = findingOf(ratio, level);
    const marks = chosenSet(page, choices.get("set")).labels.devoicingBasis;
    const who = figures.speakers(ratio.speakers);
    const number = (name: string, value: (row: TwinRow) => number | null, digits: number) => ({
      name,
      value,
      show: (row: TwinRow) => value(row)?.toFixed(digits) ?? "–",
    });
    return figure({
      id,
      question,
      finding,
      picture: twinPlot([overall, ...rows.slice(0, mostMorae)], {
        ...{ widthPx, label: twins.axis, alternative: finding },
        sides: { voiced: twins.voiced, devoiced: twins.devoiced },
      }),
      basis: {
        counts:
          marks === null
            ? ""
            : twins.counts(
                ...([ratio.devoicedTokens, ratio.voicedTokens, ratio.morae.length] as const),
                ...([who, figures.marks[marks]] as const),
              ),
        method: twins.method,
        warnings: [],
      },
      remarks: [twins.remark, ...(rows.length > mostMorae ? [twins.most(mostMorae)] : [])],
      numbers: numbersTable(
        id,
        [overall, ...rows],
        [
          { name: twins.columns.mora, value: (row) => row.name },
          number(twins.columns.ratio, (row) => row.ratio?.estimate ?? null, 3),
          number(twins.columns.low, (row) => row.ratio?.low ?? null, 3),
          number(twins.columns.high, (row) => row.ratio?.high ?? null, 3),
          number(twins.columns.devoicedMs, (row) => row.devoicedMs, 0),
          number(twins.columns.voicedMs, (row) => row.voicedMs, 0),
          { name: twins.columns.devoiced, value: (row) => row.devoiced },
          { name: twins.columns.voiced, value: (row) => row.voiced },
          { name: twins.columns.speakers, value: (row) => row.speakers },
        ],
      ),
    });
  });
}
