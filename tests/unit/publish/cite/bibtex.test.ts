import { parse } from "@retorquere/bibtex-parser";
import fc from "fast-check";
import { expect, test } from "vitest";
import { bibtex } from "../../../../src/publish/cite/bibtex.ts";
import type { CslItem } from "../../../../src/publish/cite/cslItems.ts";

const item = (changes: Partial<CslItem>): CslItem => ({ id: "a", type: "figure", title: "A", ...changes });
const read = (items: readonly CslItem[]) => {
  const { entries, errors } = parse(bibtex(items), { sentenceCase: false });
  expect(errors).toEqual([]);
  return entries;
};

test("bibtex is read back by a BibTeX parser: an entry an item, with title, dates, version and address", () => {
  const entries = read([
    item({
      title: "/u/ between す and k: 87 % & more",
      issued: { "date-parts": [[2026, 1, 2]] },
      accessed: { "date-parts": [[2026, 11, 5]] },
      version: "1.0",
      URL: "http://127.0.0.1:4000/devoicing?before=s&after=k#devoicing-rates",
    }),
    item({ id: "b c", title: "B" }),
  ]);
  expect(entries.map(({ key, type }) => [key, type])).toEqual([
    ["a", "misc"],
    ["b-c", "misc"],
  ]);
  expect(entries[0]!.fields).toMatchObject({
    title: "/u/ between す and k: 87 % & more",
    year: "2026",
    date: "2026-01-02",
    urldate: "2026-11-05",
    version: "1.0",
    url: "http://127.0.0.1:4000/devoicing?before=s&after=k#devoicing-rates",
  });
});

test("bibtex keeps any text of a dataset from ending its field or becoming a command", () => {
  const hostile = "}\n@comment{x} \\input{y} 50 % $x_1^2$ #1 ~ & {";
  const [only, ...rest] = read([item({ title: hostile, note: hostile })]);
  expect(rest).toEqual([]);
  expect(Object.keys(only!.fields).sort()).toEqual(["note", "title"]);
});

test("bibtex of any text has as many entries as items", () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: "grapheme" }), { minLength: 1, maxLength: 4 }), (texts) => {
      const items = texts.map((text, i) => item({ id: `e${i}`, title: `t${text}`, note: `n${text}` }));
      expect(read(items)).toHaveLength(items.length);
    }),
    { numRuns: 100, seed: 7 },
  );
});
