import { truncateSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import {
  lexiconLineUnreadable,
  lexiconNoFile,
  lexiconReadingNotKana,
  lexiconTooLarge,
} from "../../../src/messages/phonology.ts";
import { UserError } from "../../../src/messages/userError.ts";
import {
  parseCorrections,
  parseLexicon,
  readLexicon,
  readReadingCorrections,
} from "../../../src/storage/readLexicon.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

test("parseLexicon(text) reads word, reading and accent, skipping comments and empty lines", () => {
  expect(parseLexicon("# mine\n\niPhone\tアイフォン\t3\n仔馬\tこうま\n", "my.tsv")).toEqual([
    { surface: "iPhone", reading: "アイフォン", accent: "3" },
    { surface: "仔馬", reading: "こうま", accent: null },
  ]);
});

test("parseLexicon(line without reading) names file and line", () => {
  expect(() => parseLexicon("仔馬\tコウマ\n仔牛\n", "my.tsv")).toThrow(
    new UserError(lexiconLineUnreadable("my.tsv", 2)),
  );
});

test("parseLexicon(reading that is not kana) names the reading", () => {
  expect(() => parseLexicon("仔馬\tkouma\n", "my.tsv")).toThrow(
    new UserError(lexiconReadingNotKana("my.tsv", 1, "kouma")),
  );
});

test("parseLexicon(text) keeps quotes and markup as they are", () => {
  expect(parseLexicon('"<b>\tビー\n', "my.tsv")[0]!.surface).toBe('"<b>');
});

test("parseCorrections(text) splits the other readings", () => {
  expect(parseCorrections("明日\tアシタ\tアス ミョーニチ\twhy\n", "c.tsv")).toEqual([
    { surface: "明日", reading: "アシタ", accent: null, alternatives: ["アス", "ミョーニチ"] },
  ]);
});

test("readReadingCorrections() finds every line of the project's file usable and every surface once", async () => {
  const corrections = await readReadingCorrections();
  const surfaces = corrections.map((entry) => entry.surface);
  expect(surfaces.length).toBeGreaterThan(100);
  expect(new Set(surfaces).size).toBe(surfaces.length);
});

test("readLexicon(no file, a folder) says which path cannot be read; it is wrong use, not a fault of the machine", async () => {
  const folder = tempFolder();
  for (const path of [folder, join(folder, "none.tsv")])
    await expect(readLexicon(path)).rejects.toThrow(
      expect.objectContaining({ message: expect.stringContaining(`${path} cannot be read`), exitCode: 2 }),
    );
});

test("readLexicon(a device, which never ends, or a file of more than 64 MB) refuses it by name", async () => {
  const folder = tempFolder({ "large.tsv": "" });
  const large = join(folder, "large.tsv");
  truncateSync(large, 64 * 2 ** 20 + 1);
  await expect(readLexicon(large)).rejects.toThrow(new UserError(lexiconTooLarge(large, 64)));
  await expect(readLexicon("/dev/zero")).rejects.toThrow(new UserError(lexiconNoFile("/dev/zero")));
});
