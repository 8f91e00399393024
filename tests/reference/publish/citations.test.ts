import { parse } from "@retorquere/bibtex-parser";
import { Ajv } from "ajv";
import { expect, test } from "vitest";
import known from "../../../data/reference/known-datasets.json" with { type: "json" };
import { bibtex } from "../../../src/publish/cite/bibtex.ts";
import { cslJson, siteItems, viewItems } from "../../../src/publish/cite/cslItems.ts";
import type { Provenance } from "../../../src/publish/cite/provenance.ts";
import { cslSchema } from "./cslSchema.ts";

const validate = new Ajv({ allErrors: true, allowUnionTypes: true }).compile(cslSchema);
const errorsIn = (json: string) => (validate(JSON.parse(json)) ? [] : validate.errors);

const datasets = known.datasets.map(({ id, name, version, licence, citation, homePage }, i) => ({
  ...{ id, name, version, licence, citation, homePage },
  notice: i === 0 ? "The voice is synthetic." : null,
}));
const provenance: Provenance = {
  software: { name: "morascope", version: "0.1.0" },
  resultsOf: "2026-01-02T03:04:05.000Z",
  datasets,
  setNames: {},
};
const view = {
  ...{ figure: "devoicing-rates", finding: "“u” 87 %, é, す", datasets, setName: null },
  ...{ filter: "Vowels: i, ɯ (u)", basis: "12 vowels", address: "http://localhost/devoicing?a=b&c=d#x" },
  seenOn: "2026-11-25T10:00:00.000Z",
};

test("citations of the known datasets, of the software, the results and a figure are valid CSL-JSON", () => {
  expect(datasets.length).toBeGreaterThan(3);
  expect(errorsIn(cslJson(siteItems(provenance, "http://localhost/")))).toEqual([]);
  expect(errorsIn(cslJson(viewItems(provenance, view)))).toEqual([]);
});

test("the check refuses what is no CSL-JSON: an unknown field, an unknown kind, a missing id, a date with four parts", () => {
  const [good] = siteItems(provenance);
  for (const bad of [
    { ...good, licence: "MIT" },
    { ...good, type: "corpus" },
    { ...good, id: undefined },
    { ...good, issued: { "date-parts": [[2026, 1, 2, 3]] } },
  ])
    expect(errorsIn(JSON.stringify([bad]))).not.toEqual([]);
});

test("the BibTeX file holds the same entries as the CSL-JSON file, for a BibTeX parser", () => {
  const items = viewItems(provenance, view);
  const { entries, errors } = parse(bibtex(items), { sentenceCase: false });
  expect(errors).toEqual([]);
  expect(entries.map(({ key }) => key)).toEqual(items.map(({ id }) => id));
  expect(entries.map(({ fields }) => fields.version)).toEqual(items.map(({ version }) => version));
});
