import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { rhythmDependsOnText } from "../../../src/messages/explain.ts";
import type { Choices } from "../choices.ts";
import { figure } from "../figure.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { speakerPlot } from "../speakerPlot.ts";
import { chosenTiming, type TimingPage } from "./timingChoices.ts";

/** Each speaker's own step a mora. */
export function stepsFigure(page: TimingPage, choices: Choices): HTMLElement {
  const id = "timing-steps";
  return live(choices, (widthPx) => {
    const { timing: words, figures } = interfaceText();
    const { steps, growth } = words;
    const chosen = chosenTiming(page, choices);
    const line = chosen?.timing[chosen.unit === "word" ? "words" : "phrases"].found ?? null;
    const question = steps.question;
    if (line === null || line.perSpeaker.length < 2)
      return figure({ id, question, finding: steps.none, picture: null, numbers: null });
    const values = line.perSpeaker.map(({ msPerMora }) => msPerMora);
    const { estimate, low, high } = line.msPerMora;
    const all = [...values, low ?? estimate, high ?? estimate];
    const domain = [10 * Math.floor(Math.min(...all) / 10), 10 * Math.ceil(Math.max(...all) / 10)] as const;
    const finding = steps.finding(
      values.length,
      Math.min(...values).toFixed(0),
      Math.max(...values).toFixed(0),
    );
    const dots = line.perSpeaker.map(({ speaker, msPerMora, stretches }) => ({
      ...{ speaker, value: msPerMora, tokens: stretches },
    }));
    return figure({
      id,
      question,
      finding,
      picture: speakerPlot(dots, {
        ...{ widthPx, domain, label: steps.axis, alternative: finding },
        overall: low === null || high === null ? null : { estimate, low, high },
        format: (value) => `${value.toFixed(0)} ms`,
      }),
      basis: {
        counts:
          chosen!.timing.basis === null
            ? ""
            : growth.counts(
                ...([line.stretches, chosen!.unit, figures.speakers(line.msPerMora.speakers)] as const),
                figures.times[chosen!.timing.basis],
              ),
        method: growth.method,
        warnings: chosen!.timing.warnings.filter((warning) => warning !== rhythmDependsOnText()),
      },
      remarks: [steps.remark],
      numbers: numbersTable(id, line.perSpeaker, [
        { name: steps.columns.speaker, value: (row) => row.speaker },
        { name: steps.columns.step, value: (row) => row.msPerMora, show: (row) => row.msPerMora.toFixed(1) },
        {
          name: steps.columns.start,
          value: (row) => row.interceptMs,
          show: (row) => row.interceptMs.toFixed(0),
        },
        { name: steps.columns.share, value: (row) => row.rSquared, show: (row) => row.rSquared.toFixed(3) },
        { name: steps.columns.n, value: (row) => row.stretches },
      ]),
    });
  });
}
