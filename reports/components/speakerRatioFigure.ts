import type { Contrast } from "../../src/estimates/lengthContrast.ts";
import { ratioBasis, speakerRatiosSentence } from "../../src/findings/sentences/ratios.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { ratiosCommand } from "../../src/publish/terminalCommand.ts";
import type { Choices } from "./choices.ts";
import type { Corpus } from "./corpus.ts";
import { figure } from "./figure.ts";
import { lengthOptions, lengthRatios } from "./lengthRatios.ts";
import { live } from "./live.ts";
import { numbersTable } from "./numbersTable.ts";
import { ratioAxis, ratioColumns } from "./ratioColumns.ts";
import { speakerPlot } from "./speakerPlot.ts";

/** For speakers, whose spread is the point: no wider than they need. */
function closeDomain(values: readonly number[]): [number, number] {
  return [Math.floor(Math.min(...values) * 4) / 4, Math.ceil(Math.max(...values) * 4) / 4];
}

/** Each speaker's own ratio, long and short compared within the speaker. */
export function speakerRatioFigure(corpus: Corpus, choices: Choices, contrast: Contrast): HTMLElement {
  const id = `${contrast}-speakers`;
  return live(choices, (widthPx) => {
    const words = interfaceText().figures;
    const options = lengthOptions(corpus, choices, contrast);
    const overall = lengthRatios(corpus, options, []).rows[0];
    const { rows } = lengthRatios(corpus, options, ["speaker"]);
    const named = rows
      .filter((row) => row.estimate !== null)
      .map((row) => ({ name: String(row.by.speaker), row }));
    const asked = words.speakersDiffer;
    if (overall?.estimate == null || named.length < 2) {
      const finding = words.noTwoSpeakers;
      return figure({ id, question: asked, finding, picture: null, numbers: null });
    }
    const ratios = named.map(({ row }) => row.estimate!).sort((a, b) => a - b);
    const finding = speakerRatiosSentence(ratios, overall);
    const dots = named.map(({ name, row }) => ({
      speaker: name,
      value: row.estimate!,
      tokens: row.long.tokens,
    }));
    const domain = closeDomain([...ratios, overall.low!, overall.high!]);
    const band = { estimate: overall.estimate, low: overall.low!, high: overall.high! };
    return figure({
      id,
      question: asked,
      finding,
      picture: speakerPlot(dots, { ...ratioAxis, widthPx, domain, overall: band, alternative: finding }),
      basis: ratioBasis([{ name: "", row: overall }]),
      remarks: [words.ratioDots],
      commands: [ratiosCommand(options, ["speaker"])],
      numbers: numbersTable(id, named, ratioColumns(words.speaker)),
    });
  });
}
