import type { Contrast } from "../../src/estimates/lengthContrast.ts";
import { durationsSentence, ratioBasis } from "../../src/findings/sentences/ratios.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import type { Choices } from "./choices.ts";
import { chosenSet } from "./chosenSet.ts";
import type { Corpus } from "./corpus.ts";
import type { Distribution } from "./distributionPlot.ts";
import { distributionPlot } from "./distributionPlot.ts";
import { distributionsOf } from "./distributions.ts";
import { figure } from "./figure.ts";
import { lengthOptions, lengthRatios } from "./lengthRatios.ts";
import { live } from "./live.ts";
import { numbersTable } from "./numbersTable.ts";
import { soundOrder } from "./ratioColumns.ts";

/** A picture of more strips than this is too long to take in. */
const mostSounds = 8;

function distributionTable(id: string, contrast: Contrast, found: readonly Distribution[]): HTMLElement {
  const { sides, columns } = interfaceText().spread;
  const counts = found.flatMap(({ name, side, histogram }) =>
    Array.from(histogram, (tokens, ms) => ({ name, side: sides[contrast][side], ms, tokens })),
  );
  return numbersTable(
    id,
    counts.filter(({ tokens }) => tokens > 0),
    [
      { name: columns.sound, value: (count) => count.name },
      { name: columns.side, value: (count) => count.side },
      { name: columns.duration, value: (count) => count.ms },
      { name: columns.tokens, value: (count) => count.tokens },
    ],
  );
}

/** How the durations of short and long spread, sound by sound. */
export function distributionFigure(corpus: Corpus, choices: Choices, contrast: Contrast): HTMLElement {
  const id = `${contrast}-durations`;
  return live(choices, (widthPx) => {
    const words = interfaceText().spread;
    const { labels } = chosenSet(corpus, choices.get("set"));
    const options = lengthOptions(corpus, choices, contrast);
    const found = distributionsOf(corpus.cells, options, soundOrder, mostSounds);
    const overall = lengthRatios(corpus, options, []).rows[0];
    const asked = words.question;
    if (found.length === 0 || overall === undefined) {
      const finding = words.none;
      return figure({ id, question: asked, finding, picture: null, numbers: null });
    }
    const finding = durationsSentence(overall);
    const floor = labels.timeFloorMs === null ? [] : [words.floor(labels.timeFloorMs)];
    const picture = distributionPlot(found, {
      widthPx,
      sides: words.sides[contrast],
      floorMs: labels.timeFloorMs,
      alternative: finding,
    });
    return figure({
      id,
      question: asked,
      finding,
      picture,
      basis: ratioBasis([{ name: "", row: overall }]),
      remarks: [words.remark, ...floor],
      numbers: distributionTable(id, contrast, found),
    });
  });
}
