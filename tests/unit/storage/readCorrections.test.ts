import { join } from "node:path";
import encodingJapanese from "encoding-japanese";
import { describe, expect, test } from "vitest";
import * as messages from "../../../src/messages/corrections.ts";
import { sheetColumnMissing } from "../../../src/messages/marks.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { readCorrections } from "../../../src/storage/readCorrections.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const header = "dataset,utterance,startMs,endMs,phone,decision,markedAt";
const lineOf = (utterance: string, decision = "devoiced", startMs = "100.5", endMs = "150.0") =>
  `d,${utterance},${startMs},${endMs},i,${decision},2026-01-01T00:00:00.000Z`;

function place(content: string | Uint8Array, name = "marks.csv"): string {
  return join(tempFolder({ [name]: content }), name);
}
const read = (...lines: string[]) => readCorrections([place([header, ...lines, ""].join("\n"))]);

function refusal(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    expect(error).toBeInstanceOf(UserError);
    return (error as Error).message;
  }
  throw new Error("nothing was refused");
}

describe("readCorrections", () => {
  test("gives each mark with its place, its line and what was heard", () => {
    const file = place(
      [header, lineOf("a"), lineOf("b", "voiced"), lineOf("c", "cannot tell"), ""].join("\n"),
    );
    expect(readCorrections([file])).toEqual(
      [
        ["a", true],
        ["b", false],
        ["c", null],
      ].map(([utterance, devoiced], i) => ({
        ...{ dataset: "d", utterance, phone: "i", startMs: 100.5, endMs: 150, devoiced },
        ...{ file, line: i + 2 },
      })),
    );
  });

  test("reads what spreadsheets make of it: byte order mark, CRLF, semicolons, tabs, Shift_JIS, more columns", () => {
    const text = [header, lineOf("発話1"), ""].join("\n");
    const shiftJis = encodingJapanese.convert(encodingJapanese.stringToCode(text), {
      from: "UNICODE",
      to: "SJIS",
    });
    const saved = [
      `\ufeff${text}`,
      text.replaceAll("\n", "\r\n"),
      text.replaceAll(",", ";"),
      text.replaceAll(",", "\t"),
      text.replace("markedAt", "markedAt,note").replace("Z\n", "Z,unsure at first\n"),
      Uint8Array.from(shiftJis),
    ];
    for (const one of saved) expect(readCorrections([place(one)])[0]!.utterance).toBe("発話1");
  });

  test("takes off the apostrophe that keeps a name from being run as a formula", () => {
    expect(read(lineOf("'=u1"))[0]!.utterance).toBe("=u1");
  });

  test("keeps one of two lines that say the same, over several files, and refuses two that differ", () => {
    expect(read(lineOf("a"), lineOf("a")).length).toBe(1);
    const [one, two] = [
      place([header, lineOf("a")].join("\n")),
      place([header, lineOf("b"), lineOf("a", "voiced")].join("\n")),
    ];
    expect(refusal(() => readCorrections([one, two]))).toBe(messages.correctionTwice(two, 3, one, 2));
  });

  test.each([
    [
      "decision",
      lineOf("a", "whispered"),
      (file: string) => messages.correctionDecisionUnknown(file, 2, "whispered"),
    ],
    [
      "start",
      lineOf("a", "voiced", "soon"),
      (file: string) => messages.correctionFieldWrong(file, 2, "startMs", "soon"),
    ],
    [
      "negative start",
      lineOf("a", "voiced", "-5"),
      (file: string) => messages.correctionFieldWrong(file, 2, "startMs", "-5"),
    ],
    [
      "end before start",
      lineOf("a", "voiced", "200", "150"),
      (file: string) => messages.correctionFieldWrong(file, 2, "endMs", "150"),
    ],
    [
      "missing utterance",
      lineOf(""),
      (file: string) => messages.correctionFieldWrong(file, 2, "utterance", ""),
    ],
    ["line cut short", "d,a,100", (file: string) => messages.correctionFieldWrong(file, 2, "endMs", "")],
  ])("names file and line of a wrong %s", (_, line, message) => {
    const file = place([header, line, ""].join("\n"));
    expect(refusal(() => readCorrections([file]))).toBe(message(file));
  });

  test("says that a file holds no correction, or lacks a column, or is not there", () => {
    for (const nothing of ["", `${header}\n`]) {
      const file = place(nothing);
      expect(refusal(() => readCorrections([file]))).toBe(messages.correctionsEmpty(file));
    }
    const sheet = place("clip,mark\na,d\n");
    expect(refusal(() => readCorrections([sheet]))).toBe(
      sheetColumnMissing(sheet, "dataset", ["clip", "mark"]),
    );
    expect(refusal(() => readCorrections([join(tempFolder(), "none.csv")]))).toContain("none.csv");
  });
});
