import { expect, test } from "vitest";
import { parseDatasetFile } from "../../../src/datasets/datasetFile.ts";
import { UserError } from "../../../src/messages/userError.ts";

const parse = (data: unknown) => parseDatasetFile(JSON.stringify(data), "dataset.json");

test("parseDatasetFile accepts an empty object and everything the format holds", () => {
  expect(parse({})).toEqual({});
  const whole = {
    id: "my-corpus",
    name: "My corpus",
    version: "1.0",
    citation: "Someone (2024)",
    homePage: null,
    licence: { name: "CC BY 4.0", url: "https://creativecommons.org/licenses/by/4.0/" },
    attribution: ["Someone"],
    redistribution: { kind: "excerpt", utterances: 10, note: "ten" },
    synthetic: false,
    notice: null,
    layout: "table",
    table: { file: "list.tsv", delimiter: "tab", columns: { text: "sentence", startSec: "from" } },
    speaker: { from: "id", pattern: "^([a-z]+)_" },
    labelSets: [
      {
        id: "a",
        path: "lab/a",
        format: "ctm",
        timeBasis: "aligned",
        timeGridMs: 10,
        timeFloorMs: null,
        devoicingBasis: null,
        lengthFrom: "label",
        accentBasis: "annotated",
        note: "n",
      },
    ],
  };
  expect(parse(whole)).toEqual(whole);
});

test.each([
  [{ name: "x", licence: { nam: "y" } }, ["licence.nam is not a field", "licence.name is missing"]],
  [
    { redistribution: { kind: "maybe", note: "n" } },
    ['redistribution.kind is "maybe"; it must be ("all" | "excerpt" | "none")'],
  ],
  [{ redistribution: { kind: "excerpt", note: "n" } }, ['"utterances" with kind "excerpt"']],
  [{ redistribution: { kind: "all", utterances: 3, note: "n" } }, ['"utterances" with kind "excerpt"']],
  [
    {
      labelSets: [
        { id: "a", path: "lab" },
        { id: "b", path: "../lab" },
      ],
    },
    ['labelSets.1.path is "../lab"; it must be a path inside the dataset folder'],
  ],
  [
    { labelSets: [{ id: "a", path: "lab", devoicingBasis: "heard" }] },
    ['labelSets.0.devoicingBasis is "heard"', '"measured"', '"predicted"'],
  ],
  [{ labelSets: [{ id: "a", path: "lab", timeGridMs: 0 }] }, ["labelSets.0.timeGridMs is 0; it must be >0"]],
  [{ id: "My Corpus" }, ['id is "My Corpus"; it must be lower-case letters, digits and hyphens']],
  [
    { speaker: { from: "id", pattern: "[" } },
    ['speaker.pattern is "["; it must be a regular expression with one (group)'],
  ],
  [{ speaker: { from: "id", pattern: "no group" } }, ["one (group)"]],
  [{ table: { file: "/etc/passwd", columns: {} } }, ['table.file is "/etc/passwd"']],
  [{ attribution: "me" }, ['attribution is "me"; it must be a list in square brackets']],
  [{ name: 7 }, ["name is 7; it must be text in quotation marks"]],
  ["just text", ["It must be one object in braces"]],
  [[], ["It must be one object in braces"]],
  [null, ["It must be one object in braces"]],
  [{ speaker: { from: "id", pattern: "^(a+)+$" } }, ["no group repeated"]],
  [{ speaker: { from: "id", pattern: "^([a-z]+)_.*.*.*x" } }, ["at most three"]],
  [
    { names: "x", layout: 3, licence: {}, labelSets: [{ id: "", path: "../x" }] },
    [
      "names is not a field",
      "layout is 3",
      "licence.name is missing",
      'labelSets.0.id is ""',
      "labelSets.0.path",
    ],
  ],
])("parseDatasetFile refuses %j with path, value and what is allowed", (data, parts) => {
  let message = "";
  try {
    parse(data);
  } catch (error) {
    expect(error).toBeInstanceOf(UserError);
    message = (error as Error).message;
  }
  for (const part of parts) expect(message).toContain(part);
});

test("parseDatasetFile names the line of a syntax error", () => {
  expect(() => parseDatasetFile('{\n  "name": "x",\n  "id" "y"\n}', "card/dataset.json")).toThrow(
    /card\/dataset\.json, line 3: this is not JSON/,
  );
  expect(() => parseDatasetFile('{"name": "x"', "dataset.json")).toThrow(/line 1/);
});
