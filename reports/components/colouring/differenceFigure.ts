import type { Colouring } from "../../../src/estimates/colouring.ts";
import { formatDecimals } from "../../../src/findings/format.ts";
import { soundName } from "../../../src/findings/soundNames.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { explainCommand } from "../../../src/publish/terminalCommand.ts";
import type { Choices } from "../choices.ts";
import { chosenSet } from "../chosenSet.ts";
import { figure } from "../figure.ts";
import { intervalPlot } from "../intervalPlot.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { type ColouringPage, chosenColouring } from "./colouringChoices.ts";
import { colouringCounts } from "./colouringCounts.ts";

type Told = Colouring & { readonly difference: NonNullable<Colouring["difference"]> };

const isTold = (one: Colouring | null): one is Told => one !== null && one.difference !== null;
const signed = (hz: number) => `${hz < 0 ? "−" : "+"}${Math.abs(hz).toFixed(0)}`;

function findingOf({ consonant, difference, speakers, level }: Told): string {
  const { difference: words } = interfaceText().colouring;
  const { interval, speakers: who } = interfaceText().figures;
  const { estimate, low, high } = difference;
  const text = (hz: number | null) => (hz === null ? null : formatDecimals(hz, 0));
  const args = [
    soundName(consonant),
    `${Math.abs(estimate).toFixed(0)}\u00a0Hz`,
    interval(level, text(low), text(high), "Hz"),
    who(speakers),
  ] as const;
  if (low !== null && low > 0) return words.brighter(...args);
  return high !== null && high < 0 ? words.darker(...args) : words.open(...args);
}

/** The same whole hundreds on both sides of 0. */
function reachOf(told: readonly Told[]): number {
  const bounds = told.flatMap(({ difference: { estimate, low, high } }) => [estimate, low ?? 0, high ?? 0]);
  return 100 * Math.ceil(Math.max(100, ...bounds.map(Math.abs)) / 100);
}

/** Centre of gravity before /i/ minus before /u/, before whispered and before voiced vowels. */
export function differenceFigure(page: ColouringPage, choices: Choices): HTMLElement {
  const id = "colouring-difference";
  return live(choices, (widthPx) => {
    const { colouring: words, figures } = interfaceText();
    const { difference: own } = words;
    const { answer } = chosenColouring(page, choices);
    const both = (["devoiced", "voiced"] as const).map(answer);
    const told = both.filter(isTold);
    const { question } = own;
    const [devoiced] = both;
    if (told.length === 0) {
      const reason = devoiced?.reason ?? page.data.reason;
      const finding = reason === null ? figures.noAnswers : figures.cannotTell(reason);
      return figure({ id, question, finding, picture: null, numbers: null });
    }
    const finding = isTold(devoiced!) ? findingOf(devoiced) : figures.cannotTell(devoiced?.reason ?? "");
    const reach = reachOf(told);
    const first = told[0]!;
    const number = (name: string, value: (row: Told) => number | null) => ({
      name,
      value,
      show: (row: Told) => value(row)?.toFixed(0) ?? "–",
    });
    return figure({
      id,
      question,
      finding,
      picture: intervalPlot(
        told.map((row) => ({
          ...row.difference,
          name: words.vowels[row.vowel],
          remark: own.tokens(row.beforeI?.tokens ?? 0, row.beforeU?.tokens ?? 0),
        })),
        {
          ...{ widthPx, label: own.axis, domain: [-reach, reach], alternative: finding },
          format: (hz) => `${signed(hz)} Hz`,
          rule: 0,
        },
      ),
      basis: {
        counts: colouringCounts(first),
        method: `${first.method}.`,
        warnings: [...new Set(told.flatMap(({ warnings }) => warnings))],
      },
      remarks: [
        own.remark,
        ...both.flatMap((one) =>
          one === null || one.reason === null ? [] : [own.reason(words.vowels[one.vowel], one.reason)],
        ),
      ],
      commands: [explainCommand("colouring", chosenSet(page, choices.get("set")).dataset, page.level)],
      numbers: numbersTable(id, told, [
        { name: own.columns.vowel, value: (row) => words.vowels[row.vowel] },
        number(own.columns.difference, (row) => row.difference.estimate),
        number(own.columns.low, (row) => row.difference.low),
        number(own.columns.high, (row) => row.difference.high),
        number(own.columns.mixed, (row) => row.difference.mixed?.estimate ?? null),
        number(own.columns.mixedLow, (row) => row.difference.mixed?.low ?? null),
        number(own.columns.mixedHigh, (row) => row.difference.mixed?.high ?? null),
        number(own.columns.i, (row) => row.beforeI?.meanHz ?? null),
        number(own.columns.u, (row) => row.beforeU?.meanHz ?? null),
        { name: own.columns.nI, value: (row) => row.beforeI?.tokens ?? 0 },
        { name: own.columns.nU, value: (row) => row.beforeU?.tokens ?? 0 },
        { name: own.columns.speakers, value: (row) => row.speakers },
        { name: own.columns.words, value: (row) => row.words },
      ]),
    });
  });
}
