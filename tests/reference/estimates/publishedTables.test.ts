import { describe, expect, test } from "vitest";
import { tokenTableOfRows } from "../../../src/estimates/tokenTable.ts";
import { vowelSpace } from "../../../src/estimates/vowelSpace.ts";
import { loadFormantTables, loadRhythmTables } from "../../../src/storage/loadReferenceTables.ts";

const tables = await loadFormantTables();
const vowel = (id: string, name: string) =>
  tables.find((table) => table.id === id)!.vowels.find((one) => one.vowel === name)!;

describe("published tables", () => {
  test("every value has a source and says how far it was seen; ids are different", async () => {
    const all = [...tables, ...(await loadRhythmTables())];
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    for (const { citation } of all) expect(citation).toMatch(/\(\d{4}\)/);
    const marks = tables.flatMap(({ vowels }) => vowels.map(({ mark }) => mark));
    expect(marks.filter((mark) => mark === "read-secondary").length).toBeGreaterThan(40);
    for (const { citation, vowels } of tables)
      expect(vowels.some(({ mark }) => mark === "memory")).toBe(/from memory/.test(citation));
  });

  // Orderings on which all four Japanese tables agree: F1 a > {e, o} > {i, u}; F2 i > e > u > o.
  test("the Japanese tables agree on the order of the vowels", () => {
    const japanese = tables.filter(({ language }) => language === "Japanese");
    expect(japanese).toHaveLength(4);
    for (const { id } of japanese) {
      const f1 = (name: string) => vowel(id, name).f1Hz;
      const f2 = (name: string) => vowel(id, name).f2Hz;
      expect(f1("a")).toBeGreaterThan(Math.max(f1("e"), f1("o")));
      expect(Math.min(f1("e"), f1("o"))).toBeGreaterThan(Math.max(f1("i"), f1("u")));
      expect(f2("i")).toBeGreaterThan(f2("e"));
      expect(f2("e")).toBeGreaterThan(f2("u"));
      expect(f2("u")).toBeGreaterThan(f2("o"));
    }
  });

  test("Japanese /u/ lies further forward than American English /u/, in men and in women", () => {
    expect(vowel("kasuya-1968-men", "u").f2Hz).toBe(1300);
    expect(vowel("hillenbrand-1995-men", "u").f2Hz).toBe(997);
    expect(vowel("kasuya-1968-women", "u").f2Hz).toBeGreaterThan(vowel("hillenbrand-1995-women", "u").f2Hz);
  });
});

test("vowelSpace normalised brings the published men and women together", () => {
  const rows = ["men", "women"].flatMap((who) =>
    tables
      .find(({ id }) => id === `kasuya-1968-${who}`)!
      .vowels.flatMap(({ vowel: phone, f1Hz, f2Hz }) =>
        // Three vowels of each kind, 3 % apart: a spread that is not what is tested.
        [0.97, 1, 1.03].map((factor) => ({
          ...{ dataset: "d", labelSet: "l", speaker: who, kind: "vowel", phone, length: "short" },
          ...{ f0Hz: who === "men" ? 130 : 230, f1Hz: f1Hz * factor, f2Hz: f2Hz * factor },
        })),
      ),
  );
  const [got] = vowelSpace(tokenTableOfRows(rows));
  const [women, men] = got!.groups.map(({ vowels }) => vowels.filter(({ length }) => length === "all"));
  const distances = men!.map((own, k) => ({
    hz: Math.abs(own.f2Hz.estimate - women![k]!.f2Hz.estimate) / 500,
    z: Math.abs(own.f2Z!.estimate - women![k]!.f2Z!.estimate),
  }));
  const mean = (of: "hz" | "z") => distances.reduce((sum, one) => sum + one[of], 0) / distances.length;
  expect(mean("z")).toBeLessThan(0.25);
  expect(mean("z")).toBeLessThan(mean("hz") / 2);
});
