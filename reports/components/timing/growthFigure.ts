import { formatMs } from "../../../src/findings/format.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { rhythmDependsOnText } from "../../../src/messages/explain.ts";
import { growthSentence } from "../../../src/publish/timingFinding.ts";
import type { Choices } from "../choices.ts";
import { figure } from "../figure.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { growthPlot } from "./growthPlot.ts";
import { chosenTiming, type TimingPage } from "./timingChoices.ts";

/** Fewer durations than this say little of how they spread. */
const leastDurations = 5;

/** Durations of words or stretches by their number of morae, with the line through them. */
export function growthFigure(page: TimingPage, choices: Choices): HTMLElement {
  const id = "timing-growth";
  return live(choices, (widthPx) => {
    const { timing: words, figures } = interfaceText();
    const { growth } = words;
    const chosen = chosenTiming(page, choices);
    const unit = chosen?.unit ?? "word";
    const found = chosen === null ? null : chosen.timing[unit === "word" ? "words" : "phrases"];
    const bins = chosen?.stretches?.bins ?? [];
    const shown = bins.filter(({ stretches }) => stretches >= leastDurations);
    const question = growth.question[unit];
    if (chosen === null || found?.found == null || shown.length < 2) {
      const finding = found?.reason == null ? figures.noAnswers : figures.cannotTell(found.reason);
      return figure({ id, question, finding, picture: null, numbers: null });
    }
    const { timing } = chosen;
    const line = found.found;
    const finding = growthSentence(line, timing.level);
    const mean = { interceptMs: line.interceptMs.estimate, msPerMora: line.msPerMora.estimate };
    const picture = growthPlot(shown, chosen.stretches!.points, {
      widthPx,
      xLabel: words.morae,
      yLabel: words.duration,
      line: mean,
      speakers: line.perSpeaker.length > 1 ? line.perSpeaker : [],
      alternative: finding,
    });
    const who = figures.speakers(line.msPerMora.speakers);
    return figure({
      id,
      question,
      finding,
      picture,
      basis: {
        counts:
          timing.basis === null ? "" : growth.counts(line.stretches, unit, who, figures.times[timing.basis]),
        method: growth.method,
        warnings: timing.warnings.filter((warning) => warning !== rhythmDependsOnText()),
      },
      remarks: [
        growth.left(formatMs(line.residualMs.estimate)),
        growth.remark,
        ...(shown.length < bins.length ? [growth.few(leastDurations)] : []),
      ],
      numbers: numbersTable(id, bins, [
        { name: growth.columns.morae, value: (bin) => bin.morae },
        { name: growth.columns.n, value: (bin) => bin.stretches },
        { name: growth.columns.speakers, value: (bin) => bin.speakers },
        ...[10, 25, 50, 75, 90].map((percent, k) => ({
          name: growth.quantile(percent),
          value: (bin: (typeof bins)[number]) => bin.quantilesMs[k]!,
        })),
        {
          name: growth.columns.line,
          value: (bin) => mean.interceptMs + bin.morae * mean.msPerMora,
          show: (bin) => (mean.interceptMs + bin.morae * mean.msPerMora).toFixed(0),
        },
      ]),
    });
  });
}
