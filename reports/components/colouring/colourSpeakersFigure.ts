import { formatDecimals } from "../../../src/findings/format.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { Choices } from "../choices.ts";
import { figure } from "../figure.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { speakerPlot } from "../speakerPlot.ts";
import { type ColouringPage, chosenColouring } from "./colouringChoices.ts";
import { colouringCounts } from "./colouringCounts.ts";

/** Each speaker's own difference before whispered vowels. */
export function colourSpeakersFigure(page: ColouringPage, choices: Choices): HTMLElement {
  const id = "colouring-speakers";
  return live(choices, (widthPx) => {
    const { colouring: words } = interfaceText();
    const { speakers: own } = words;
    const { answer, side } = chosenColouring(page, choices);
    const [i, u] = [side("devoiced", "i"), side("devoiced", "u")];
    const rows = (i?.perSpeaker ?? []).flatMap((before) => {
      const other = u?.perSpeaker.find(({ speaker }) => speaker === before.speaker);
      return other === undefined ? [] : [{ speaker: before.speaker, i: before, u: other }];
    });
    const { question } = own;
    if (rows.length < 2) return figure({ id, question, finding: own.none, picture: null, numbers: null });
    const dots = rows.map((row) => ({
      speaker: row.speaker,
      value: row.i.meanHz - row.u.meanHz,
      tokens: Math.min(row.i.tokens, row.u.tokens),
    }));
    const values = dots.map(({ value }) => value);
    const text = (hz: number) => formatDecimals(hz, 0);
    const finding = own.finding(
      ...([rows.length, values.filter((value) => value > 0).length] as const),
      ...([text(Math.min(...values)), text(Math.max(...values))] as const),
    );
    const overall = answer("devoiced")?.difference ?? null;
    const { estimate = 0, low = null, high = null } = overall ?? {};
    const all = [0, ...values, low ?? 0, high ?? 0];
    const domain = [
      100 * Math.floor(Math.min(...all) / 100),
      100 * Math.ceil(Math.max(...all) / 100),
    ] as const;
    return figure({
      id,
      question,
      finding,
      picture: speakerPlot(dots, {
        ...{ widthPx, domain, label: words.difference.axis, alternative: finding },
        overall: low === null || high === null ? null : { estimate, low, high },
        format: (hz) => `${text(hz)} Hz`,
      }),
      basis: {
        counts: colouringCounts(answer("devoiced")),
        method: null,
        warnings: answer("devoiced")?.warnings ?? [],
      },
      remarks: [own.remark],
      numbers: numbersTable(id, rows, [
        { name: own.columns.speaker, value: (row) => row.speaker },
        { name: own.columns.difference, value: (row) => row.i.meanHz - row.u.meanHz },
        { name: own.columns.i, value: (row) => row.i.meanHz },
        { name: own.columns.u, value: (row) => row.u.meanHz },
        { name: own.columns.nI, value: (row) => row.i.tokens },
        { name: own.columns.nU, value: (row) => row.u.tokens },
      ]),
    });
  });
}
