import { writeFileSync } from "node:fs";
import { join } from "node:path";
import encodingJapanese from "encoding-japanese";
import { describe, expect, test } from "vitest";
import * as messages from "../../../src/messages/words.ts";
import { parseWordList, readWordList } from "../../../src/storage/readWordList.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const text =
  "word\treading\taccent\tgloss\tlevel\n菊\tキク\t0\tchrysanthemum\tN2\n切符\tきっぷ\t\tticket\t\n# a comment\n地図\tチズ\t1,0\n";

describe("parseWordList", () => {
  test("reads word, reading, accents, gloss and level, past headings and comments", () => {
    expect(parseWordList(text, "list.tsv")).toEqual({
      words: [
        { surface: "菊", reading: "キク", accents: [0], gloss: "chrysanthemum", level: "N2", line: 2 },
        { surface: "切符", reading: "きっぷ", accents: null, gloss: "ticket", level: null, line: 3 },
        { surface: "地図", reading: "チズ", accents: [1, 0], gloss: null, level: null, line: 5 },
      ],
      problems: [],
    });
  });

  test("reports each bad line with its number and goes on", () => {
    const bad = [
      "菊",
      "靴\tkutsu",
      "茶\tオャ",
      "菊\tキク\t3",
      "",
      "菊\tキク",
      "菊\tカラ",
      "音\tオト\t1",
    ].join("\n");
    const { words, problems } = parseWordList(bad, "bad.tsv");
    expect(words.map(({ reading }) => reading)).toEqual(["キク", "カラ", "オト"]);
    expect(problems).toEqual([
      messages.listLineWithoutReading("bad.tsv", 1, "菊"),
      messages.listReadingNotKana("bad.tsv", 2, "kutsu", "kutsu"),
      messages.listOddSmallKana("bad.tsv", 3, "オャ", "ャ"),
      messages.listAccentUnreadable("bad.tsv", 4, "3", 2),
      messages.listLineTwice("bad.tsv", 6, "菊", 4),
      messages.listReadingDiffers("bad.tsv", 7, "菊", "キク", "カラ", 4),
    ]);
  });

  test("takes a word in kana as its own reading, and passes over parts of speech in accents", () => {
    const { words, problems } = parseWordList("あっさり\t\t3\n全部\tゼンブ\t(名)1,(副)0\n", "k.tsv");
    expect(words.map(({ reading, accents }) => [reading, accents])).toEqual([
      ["あっさり", [3]],
      ["ゼンブ", [1, 0]],
    ]);
    expect(problems).toEqual([]);
  });

  test("says that an empty list is empty", () => {
    for (const empty of ["", "\n\n", "# nothing\n", "word\treading\n"])
      expect(parseWordList(empty, "e.tsv")).toEqual({ words: [], problems: [messages.listEmpty("e.tsv")] });
  });

  test("takes quotation marks as they are", () => {
    expect(parseWordList('菊\tキク\t\t"mum', "q.tsv").words[0]?.gloss).toBe('"mum');
  });
});

describe("readWordList", () => {
  test("gives the same words in UTF-8, with byte order mark, with CRLF, in UTF-16 and in Shift_JIS", () => {
    const folder = tempFolder();
    const expected = parseWordList(text, "x").words;
    const crlf = text.replaceAll("\n", "\r\n");
    const variants: Record<string, Uint8Array> = {
      bom: Buffer.from(`\ufeff${text}`),
      crlf: Buffer.from(crlf),
      utf16: Buffer.from(`\ufeff${text}`, "utf16le"),
      sjis: Uint8Array.from(
        encodingJapanese.convert(encodingJapanese.stringToCode(crlf), { to: "SJIS", from: "UNICODE" }),
      ),
    };
    for (const [name, bytes] of Object.entries(variants)) {
      const path = join(folder, `${name}.tsv`);
      writeFileSync(path, bytes);
      expect(readWordList(path).words, name).toEqual(expected);
    }
  });
});
