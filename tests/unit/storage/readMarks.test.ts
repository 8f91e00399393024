import { writeFileSync } from "node:fs";
import { join } from "node:path";
import encodingJapanese from "encoding-japanese";
import { describe, expect, test } from "vitest";
import * as messages from "../../../src/messages/marks.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { keyColumns, keyPathOf, readMarks, sheetColumns } from "../../../src/storage/readMarks.ts";
import { toCsv } from "../../../src/storage/writeCsv.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const clips = ["ab12-1.wav", "ab12-2.wav", "ab12-3.wav"];

function keyText(): string {
  const rows = clips.map((clip, i) => ({
    ...{ clip, dataset: "d", labelSet: "aligned", utterance: `=u${i}`, speaker: "s", index: 3, phone: "u" },
    ...{ startMs: 100.5 + i, endMs: 150, stratum: "x, doubtful", tokensInStratum: 40, sampledInStratum: 8 },
    ...{ devoiced: true, probability: 0.7 },
  }));
  return toCsv(keyColumns, rows);
}

function sheetText(marks: readonly string[]): string {
  const rows = marks.map((mark, i) => ({
    ...{ clip: clips[i], word: "菊", kana: "【ク】シ", vowel: "u", before: "k", after: "sh", mark },
  }));
  return toCsv(sheetColumns, rows);
}

/** A sheet and its key as `sample` leaves them; `bytes` stand in for the sheet. */
function place(sheet: string | Uint8Array, key: string | null = keyText()): { sheet: string; key: string } {
  const folder = tempFolder({ "to-mark/sheet.csv": sheet });
  const paths = { sheet: join(folder, "to-mark", "sheet.csv"), key: keyPathOf(join(folder, "to-mark")) };
  if (key !== null) writeFileSync(paths.key, key);
  return paths;
}

const devoiced = (sheet: string) => readMarks(sheet).marks.map((mark) => mark.devoiced);

function refusal(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    expect(error).toBeInstanceOf(UserError);
    return (error as Error).message;
  }
  throw new Error("nothing was refused");
}

describe("readMarks", () => {
  test("gives each mark with its place and what it stands for, and counts empty lines", () => {
    const { sheet } = place(sheetText(["voiced", "", "Unsure "]));
    expect(readMarks(sheet)).toEqual({
      empty: 1,
      marks: [
        {
          ...{ dataset: "d", utterance: "=u0", phone: "u" },
          startMs: 100.5,
          endMs: 150,
          devoiced: false,
          weight: 5,
        },
        {
          ...{ dataset: "d", utterance: "=u2", phone: "u" },
          startMs: 102.5,
          endMs: 150,
          devoiced: null,
          weight: 5,
        },
      ],
    });
  });

  test("takes short and Japanese marks", () => {
    expect(devoiced(place(sheetText(["d", "V", "無声化"])).sheet)).toEqual([true, false, true]);
    expect(devoiced(place(sheetText(["ｄ", "?", "有声"])).sheet)).toEqual([true, null, false]);
  });

  test("reads a sheet with byte order mark, CRLF, semicolons or tabs", () => {
    const text = sheetText(["d", "v", "u"]);
    const saved = [
      `\ufeff${text}`,
      text.replaceAll("\n", "\r\n"),
      `\ufeff${text.replaceAll(",", ";")}`,
      text.replaceAll(",", "\t"),
    ];
    for (const one of saved) expect(devoiced(place(one).sheet)).toEqual([true, false, null]);
  });

  test("reads a sheet that a spreadsheet saved in Shift_JIS or UTF-16", () => {
    const text = sheetText(["d", "有声", "u"]);
    const shiftJis = encodingJapanese.convert(encodingJapanese.stringToCode(text), {
      from: "UNICODE",
      to: "SJIS",
    });
    const utf16 = Buffer.from(`\ufeff${text}`, "utf16le");
    expect(devoiced(place(Uint8Array.from(shiftJis)).sheet)).toEqual([true, false, null]);
    expect(devoiced(place(utf16).sheet)).toEqual([true, false, null]);
  });

  test("says that a sheet is empty, or that no mark is in it yet", () => {
    for (const nothing of ["", `${sheetColumns.join(",")}\n`]) {
      const { sheet } = place(nothing);
      expect(refusal(() => readMarks(sheet))).toBe(messages.sheetEmpty(sheet));
    }
    const { sheet } = place(sheetText(["", "", ""]));
    expect(refusal(() => readMarks(sheet))).toBe(messages.sheetUnmarked(sheet));
  });

  test("names file, line and value of an unknown mark, an unknown clip and a clip marked twice", () => {
    const bad = place(sheetText(["d", "maybe", "v"]));
    expect(refusal(() => readMarks(bad.sheet))).toBe(messages.markUnknown(bad.sheet, 3, "maybe"));
    const other = place(sheetText(["d"]).replace("ab12-1", "ff00-1"));
    expect(refusal(() => readMarks(other.sheet))).toBe(
      messages.clipUnknown(other.sheet, 2, "ff00-1.wav", other.key),
    );
    const text = sheetText(["d", "v"]).replace("ab12-2", "ab12-1");
    const twice = place(text);
    expect(refusal(() => readMarks(twice.sheet))).toBe(
      messages.clipMarkedTwice(twice.sheet, 3, "ab12-1.wav", 2),
    );
    expect(devoiced(place(text.replace(/,v$/m, ",d")).sheet)).toEqual([true]);
  });

  test("says which column is missing", () => {
    const { sheet } = place("clip,word\nab12-1.wav,菊\n");
    expect(refusal(() => readMarks(sheet))).toBe(
      messages.sheetColumnMissing(sheet, "mark", ["clip", "word"]),
    );
  });

  test("says where the key should be, and which line of it is damaged", () => {
    const lost = place(sheetText(["d"]), null);
    expect(refusal(() => readMarks(lost.sheet))).toBe(messages.keyMissing(lost.sheet, lost.key));
    const damaged = place(sheetText(["d"]), keyText().replace("100.5", "soon"));
    expect(refusal(() => readMarks(damaged.sheet))).toContain(`${damaged.key}, line 2: startMs`);
  });

  test("refuses a file that is no text, and one that is not there", () => {
    const { sheet } = place(Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0, 0, 1));
    expect(refusal(() => readMarks(sheet))).toContain(sheet);
    expect(refusal(() => readMarks(join(tempFolder(), "sheet.csv")))).toContain("sheet.csv");
  });
});
