import { type ColouringSide, stepHz } from "../../../src/estimates/samples/colouringSample.ts";
import { soundName } from "../../../src/findings/soundNames.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { Choices } from "../choices.ts";
import { figure } from "../figure.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { type ColouringPage, chosenColouring } from "./colouringChoices.ts";
import { colouringCounts } from "./colouringCounts.ts";
import { spreadPlot } from "./spreadPlot.ts";

/** Mean over all tokens; null without any. */
function meanOf(side: ColouringSide | null): number | null {
  const tokens = side?.perSpeaker.reduce((sum, own) => sum + own.tokens, 0) ?? 0;
  if (side === null || tokens === 0) return null;
  return side.perSpeaker.reduce((sum, own) => sum + own.tokens * own.meanHz, 0) / tokens;
}

/** How the centres of gravity spread before /i/ and /u/, whispered and voiced. */
export function spreadFigure(page: ColouringPage, choices: Choices): HTMLElement {
  const id = "colouring-spread";
  return live(choices, (widthPx) => {
    const words = interfaceText().colouring;
    const { spread } = words;
    const { consonant, side, answer } = chosenColouring(page, choices);
    const { question } = spread;
    const strips = (["devoiced", "voiced"] as const)
      .map((vowel) => ({
        name: words.vowels[vowel],
        i: side(vowel, "i")?.histogram ?? [],
        u: side(vowel, "u")?.histogram ?? [],
      }))
      .filter(({ i, u }) => i.length > 0 || u.length > 0);
    const [i, u] = [meanOf(side("devoiced", "i")), meanOf(side("devoiced", "u"))];
    if (strips.length === 0 || (i === null && u === null))
      return figure({ id, question, finding: spread.none, picture: null, numbers: null });
    const hz = (value: number) => `${value.toFixed(0)}\u00a0Hz`;
    const sound = soundName(consonant);
    const finding =
      i === null || u === null
        ? spread.oneSide(sound, words.before[i === null ? "u" : "i"])
        : spread.finding(sound, hz(i), hz(u));
    const rows = strips.flatMap(({ name, ...sides }) =>
      (["i", "u"] as const).flatMap((before) =>
        sides[before].map((tokens, k) => ({ name, before: words.before[before], from: k * stepHz, tokens })),
      ),
    );
    return figure({
      id,
      question,
      finding,
      picture: spreadPlot(strips, {
        ...{ widthPx, stepHz, label: spread.axis, sides: words.before, alternative: finding },
      }),
      basis: {
        counts: (["devoiced", "voiced"] as const)
          .map((vowel) => ({ name: words.vowels[vowel], counts: colouringCounts(answer(vowel)) }))
          .flatMap(({ name, counts }) => (counts === "" ? [] : [words.difference.reason(name, counts)]))
          .join(" "),
        method: null,
        warnings: answer("devoiced")?.warnings ?? [],
      },
      remarks: [spread.remark(stepHz)],
      numbers: numbersTable(
        id,
        rows.filter(({ tokens }) => tokens > 0),
        [
          { name: spread.columns.vowel, value: (row) => row.name },
          { name: spread.columns.before, value: (row) => row.before },
          { name: spread.columns.from, value: (row) => row.from },
          { name: spread.columns.tokens, value: (row) => row.tokens },
        ],
      ),
    });
  });
}
