/**
 * The rules of CSL-JSON data as the Citation Style Language's own schema (csl-data.json, schema of CSL 1.0.2) states
 * them, put together here from its facts: the kinds of items, the fields of each kind of value, and that there are no
 * other fields. No library in the npm registry ships the schema itself.
 */
const kinds =
  "article article-journal article-magazine article-newspaper bill book broadcast chapter classic collection dataset document entry entry-dictionary entry-encyclopedia figure graphic hearing interview legal_case legislation manuscript map motion_picture musical_score pamphlet paper-conference patent performance periodical personal_communication post post-weblog regulation report review review-book software song speech standard thesis treaty webpage";
const names =
  "author chair collection-editor compiler composer container-author contributor curator director editor editorial-director executive-producer interviewer illustrator organizer original-author performer producer recipient reviewed-author translator";
const dates = "accessed available-date container event-date issued original-date submitted";
const texts =
  "language journalAbbreviation shortTitle abstract annote archive archive_collection archive_location archive-place authority call-number citation-label collection-title container-title container-title-short dimensions division DOI event event-place genre ISAN ISBN ISCI ISMN ISRC ISSN ISWC jurisdiction keyword medium note original-publisher original-publisher-place original-title part-title PMCID PMID publisher publisher-place references reviewed-title scale section source status title title-short translated-title translated-title-short URL version year-suffix";
const textsOrNumbers =
  "id chapter-number citation-number collection-number edition first-reference-note-number issue locator number number-of-pages number-of-volumes page page-first part printing supplement volume";

const each = (list: string, schema: object) =>
  Object.fromEntries(list.split(" ").map((name) => [name, schema]));
const text = { type: "string" };
const textOrNumber = { type: ["string", "number"] };
const flag = { type: ["string", "number", "boolean"] };

const name = {
  type: "object",
  properties: {
    ...each("family given dropping-particle non-dropping-particle suffix literal", text),
    ...each("comma-suffix static-ordering parse-names", flag),
  },
  additionalProperties: false,
};
const parts = { type: "array", items: textOrNumber, minItems: 1, maxItems: 3 };
const date = {
  type: "object",
  properties: {
    "date-parts": { type: "array", items: parts, minItems: 1, maxItems: 2 },
    season: textOrNumber,
    circa: flag,
    ...each("literal raw edtf", text),
  },
  additionalProperties: false,
};

/** A JSON schema for an array of items; structured dates only. */
export const cslSchema = {
  type: "array",
  items: {
    type: "object",
    properties: {
      type: { enum: kinds.split(" ") },
      categories: { type: "array", items: text },
      custom: { type: "object" },
      ...each(names, { type: "array", items: name }),
      ...each(dates, date),
      ...each(texts, text),
      ...each(textsOrNumbers, textOrNumber),
    },
    required: ["type", "id"],
    additionalProperties: false,
  },
};
