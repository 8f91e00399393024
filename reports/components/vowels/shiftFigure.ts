import type { Bounded } from "../../../src/estimates/explain/explanation.ts";
import { speakerWarnings } from "../../../src/estimates/explain/speakerWarnings.ts";
import type { LengthShift } from "../../../src/estimates/vowelSpaceGroups.ts";
import { ipaOf } from "../../../src/findings/soundNames.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { retold } from "../../../src/interface/retold.ts";
import { explainCommand } from "../../../src/publish/terminalCommand.ts";
import type { Choices } from "../choices.ts";
import { chosenSet } from "../chosenSet.ts";
import { figure } from "../figure.ts";
import { intervalPlot } from "../intervalPlot.ts";
import { live } from "../live.ts";
import { numbersTable } from "../numbersTable.ts";
import { chosenVowels, type VowelPage } from "./vowelChoices.ts";

interface ShiftRow {
  readonly group: string;
  readonly name: string;
  readonly formant: "F1" | "F2";
  readonly shift: LengthShift;
  readonly semitones: Bounded;
  readonly hz: Bounded;
}

const clear = ({ semitones: { low, high } }: ShiftRow) =>
  low !== null && high !== null && (low > 0 || high < 0);

function signed(value: number, digits: number): string {
  const size = Math.abs(value).toFixed(digits);
  return Number(size) === 0 ? size : `${value < 0 ? "−" : "+"}${size}`;
}

/** Long vowels against short ones of the same kind, in semitones of F1 and F2. */
export function shiftFigure(page: VowelPage, choices: Choices): HTMLElement {
  const id = "vowel-length-quality";
  return live(choices, (widthPx) => {
    const { vowelSpace: words, figures } = interfaceText();
    const { shift: own } = words;
    const { space, groups } = chosenVowels(page, choices);
    const { question } = own;
    if (space === undefined || space.reason !== null) {
      const finding = space?.reason == null ? figures.noAnswers : figures.cannotTell(space.reason);
      return figure({ id, question, finding, picture: null, numbers: null });
    }
    const several = groups.length > 1;
    const rows: ShiftRow[] = groups.flatMap(({ group, longAgainstShort }) =>
      (["F1", "F2"] as const).flatMap((formant) =>
        longAgainstShort.map((shift) => ({
          ...{ group, formant, shift },
          name: `${own.row(formant, ipaOf(shift.vowel))}${several ? ` (${retold(group)})` : ""}`,
          semitones: formant === "F1" ? shift.f1Semitones : shift.f2Semitones,
          hz: formant === "F1" ? shift.f1Hz : shift.f2Hz,
        })),
      ),
    );
    if (rows.length === 0) return figure({ id, question, finding: own.none, picture: null, numbers: null });
    const shifts = groups.flatMap(({ longAgainstShort }) => longAgainstShort);
    const speakers = Math.max(...shifts.map((shift) => shift.speakers));
    const alone = speakers === 1;
    const parts = rows
      .filter((row) => clear(row) && (alone || row.shift.speakers > 1))
      .map((row) =>
        own.part(
          ipaOf(row.shift.vowel),
          row.formant,
          Math.abs(row.semitones.estimate).toFixed(1),
          row.semitones.estimate > 0,
        ),
      );
    const told = parts.length > 0 ? own.finding(parts) : alone ? own.openAlone : own.open;
    const finding = alone ? `${told} ${words.chart.alone}` : told;
    const reach = Math.min(
      12,
      Math.ceil(
        Math.max(
          1,
          ...rows.flatMap(({ semitones: s }) => [s.low, s.high, s.estimate].map((x) => Math.abs(x ?? 0))),
        ),
      ),
    );
    const long = shifts.reduce((sum, { longTokens }) => sum + longTokens, 0);
    const short = shifts.reduce((sum, { shortTokens }) => sum + shortTokens, 0);
    const number = (name: string, value: (row: ShiftRow) => number | null) => ({
      name,
      value,
      show: (row: ShiftRow) => value(row)?.toFixed(2) ?? "–",
    });
    return figure({
      id,
      question,
      finding,
      picture: intervalPlot(
        rows.map((row) => ({
          ...row.semitones,
          name: row.name,
          remark: own.tokens(row.shift.longTokens, row.shift.shortTokens),
          thin: !alone && row.shift.speakers < 2,
        })),
        {
          ...{ widthPx, label: own.axis, domain: [-reach, reach], alternative: finding },
          format: (value) => signed(value, 1),
          rule: 0,
        },
      ),
      basis: {
        counts: own.counts(long, short, figures.speakers(speakers)),
        method: own.method,
        warnings: [
          ...speakerWarnings(speakers),
          ...groups.flatMap((group) =>
            group.warnings.filter((warning) => !speakerWarnings(group.speakers).includes(warning)),
          ),
        ],
      },
      remarks: [
        own.remark,
        ...(rows.some(({ shift }) => shift.speakers < speakers) && !alone ? [own.thin] : []),
      ],
      commands: [explainCommand("vowel-space", chosenSet(page, choices.get("set")).dataset, page.level)],
      numbers: numbersTable(id, rows, [
        { name: own.columns.vowel, value: (row) => row.shift.vowel },
        { name: own.columns.formant, value: (row) => row.formant },
        number(own.columns.shift, (row) => row.semitones.estimate),
        number(own.columns.low, (row) => row.semitones.low),
        number(own.columns.high, (row) => row.semitones.high),
        { ...number(own.columns.hz, (row) => row.hz.estimate), show: (row) => row.hz.estimate.toFixed(0) },
        { name: own.columns.long, value: (row) => row.shift.longTokens },
        { name: own.columns.short, value: (row) => row.shift.shortTokens },
        { name: own.columns.speakers, value: (row) => row.shift.speakers },
      ]),
    });
  });
}
