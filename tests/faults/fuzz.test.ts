import { afterAll, describe, expect, test } from "vitest";
import { loadReader } from "../../src/storage/loadReader.ts";
import { checkReader } from "../helpers/fuzz/checkReader.ts";
import { folderReader } from "../helpers/fuzz/folders.ts";
import { fuzzedReaders } from "../helpers/fuzz/readers.ts";
import { keptFolder } from "../helpers/tempFolder.ts";

const read = await loadReader();
const readers = [...fuzzedReaders(keptFolder(), read), folderReader(keptFolder(), async () => read)];
const unhandled: unknown[] = [];
const notice = (reason: unknown) => unhandled.push(reason);
process.on("unhandledRejection", notice);
afterAll(() => {
  process.off("unhandledRejection", notice);
  expect(unhandled).toEqual([]);
});

describe("spoilt input ends with a named problem, never with a crash or a second's wait", () => {
  test.each(readers)("$name", async (reader) => {
    const wanted = reader.name === "queue payloads" ? 300 : 25;
    const { cases, refused, problems } = await checkReader(reader, { seed: 7, cases: wanted });
    expect(cases).toBe(wanted);
    // what is spoilt must show: only readings, texts and addresses have nothing to complain of by themselves
    if (!["readings", "texts", "addresses"].includes(reader.name))
      expect(refused + problems).toBeGreaterThan(0);
  });
});
