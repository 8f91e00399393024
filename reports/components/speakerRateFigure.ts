import { devoicingRates } from "../../src/estimates/rates.ts";
import { intervalName, percentRange, roundPercent } from "../../src/findings/format.ts";
import { rateBasis, speakerRatesSentence } from "../../src/findings/sentences/rates.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { ratesCommand } from "../../src/publish/terminalCommand.ts";
import type { Choices } from "./choices.ts";
import { chosenSet } from "./chosenSet.ts";
import type { Corpus } from "./corpus.ts";
import { rateOptions } from "./devoicing/corrected.ts";
import { devoicingFilter } from "./devoicingChoices.ts";
import { figure } from "./figure.ts";
import { live } from "./live.ts";
import { numbersTable } from "./numbersTable.ts";
import { percentAxis, rateColumns } from "./rateColumns.ts";
import { speakerPlot } from "./speakerPlot.ts";

/** Why there is no picture of the speakers. */
function reason(corpus: Corpus, choices: Choices, speakers: number): string {
  const words = interfaceText().figures;
  if (chosenSet(corpus, choices.get("set")).labels.devoicingBasis === "predicted") return words.ruleSpeakers;
  return speakers === 1 ? words.oneSpeaker : words.noMarks;
}

/** Every speaker's rate in the chosen cut. */
export function speakerRateFigure(corpus: Corpus, choices: Choices): HTMLElement {
  return live(choices, (widthPx) => {
    const words = interfaceText().figures;
    const filter = devoicingFilter(corpus, choices);
    const options = rateOptions(corpus);
    const { rows } = devoicingRates(corpus.cells, { ...options, filter, by: ["speaker"] });
    const [overall] = devoicingRates(corpus.cells, { ...options, filter }).rows;
    const named = rows.map((row) => ({ name: String(row.by.speaker), row }));
    const measured = named.filter(({ row }) => row.estimate !== null);
    const question = words.speakersDiffer;
    const id = "devoicing-speakers";
    if (overall === undefined || measured.length < 2) {
      const finding = reason(corpus, choices, rows.length);
      return figure({ id, question, finding, picture: null, numbers: null });
    }
    const { corrected } = overall;
    const told =
      corrected === null
        ? null
        : interfaceText().devoicing.corrected.overAll(
            roundPercent(corrected.estimate),
            `${intervalName(corpus.level)} ${percentRange(corrected.low, corrected.high)}`,
          );
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
      unused: ["by"],
      finding,
      picture: speakerPlot(dots, { ...percentAxis, widthPx, overall: band, alternative: finding }),
      basis: rateBasis([{ name: "", row: overall }]),
      remarks: [...(told === null ? [] : [told]), words.rateDots],
      commands: [ratesCommand(filter, ["speaker"], corpus.level)],
      numbers: numbersTable(id, named, rateColumns(words.speaker, overall.corrected !== null)),
    });
  });
}
