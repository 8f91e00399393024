import type { Columns, ColumnType } from "../measures/column.ts";
import { cellColumns, intervalColumns, tokenTableColumns, utteranceColumns } from "../measures/columns.ts";
import { problemCsvColumns } from "../messages/csvColumns.ts";
import type { RunRecord } from "../runPipeline.ts";

const fieldTypes: Readonly<Record<ColumnType, string>> = {
  VARCHAR: "string",
  BOOLEAN: "boolean",
  INTEGER: "integer",
  DOUBLE: "number",
  "INTEGER[]": "array",
};

const tables = [
  { name: "utterances", columns: utteranceColumns },
  { name: "intervals", columns: intervalColumns },
  { name: "tokens", columns: tokenTableColumns },
  { name: "cells", columns: cellColumns },
] as const;

const problemTypes: Readonly<Record<string, string>> = { line: "integer", excluded: "boolean" };
const problemFields = Object.entries(problemCsvColumns).map(([name, description]) => ({
  ...{ name, type: problemTypes[name] ?? "string", description },
}));

/** Describes the results folder in the Frictionless Data Package format (version 2.0). */
export function datapackage(record: RunRecord): object {
  return {
    $schema: "https://datapackage.org/profiles/2.0/datapackage.json",
    name: "morascope-results",
    title: `Vowels and consonants of ${record.datasets.map(({ name }) => name).join(", ")}`,
    description: record.datasets.flatMap(({ notice }) => (notice === null ? [] : [notice])).join(" "),
    created: record.createdAt,
    version: record.software.version,
    sources: record.datasets.map(({ name, homePage, version }) => ({
      title: name,
      ...(homePage === null ? {} : { path: homePage }),
      ...(version === null ? {} : { version }),
    })),
    resources: [
      ...tables.map(({ name, columns }) => ({
        name,
        path: `${name}.parquet`,
        format: "parquet",
        mediatype: "application/vnd.apache.parquet",
        schema: { fields: fields(columns) },
      })),
      {
        ...{
          name: "problems",
          path: "problems.csv",
          format: "csv",
          mediatype: "text/csv",
          encoding: "utf-8",
        },
        schema: { fields: problemFields },
      },
      { name: "run", path: "run.json", format: "json", mediatype: "application/json", encoding: "utf-8" },
      {
        name: "estimates",
        path: "estimates.json",
        format: "json",
        mediatype: "application/json",
        encoding: "utf-8",
      },
      {
        name: "explanations",
        path: "explanations.json",
        format: "json",
        mediatype: "application/json",
        encoding: "utf-8",
      },
      {
        name: "rules",
        path: "rules.json",
        format: "json",
        mediatype: "application/json",
        encoding: "utf-8",
      },
      {
        name: "drill-words",
        path: "drill-words.json",
        format: "json",
        mediatype: "application/json",
        encoding: "utf-8",
      },
      {
        name: "findings",
        path: "findings.json",
        format: "json",
        mediatype: "application/json",
        encoding: "utf-8",
      },
    ],
  };
}

function fields(columns: Columns): object[] {
  return Object.entries(columns).map(([name, { type, unit, description, source, missing }]) => ({
    name,
    type: fieldTypes[type],
    description: `${description}${unit === null ? "" : ` [${unit}]`}. ${source}.${missing === null ? "" : ` Missing: ${missing}.`}`,
    constraints: { required: missing === null },
  }));
}
