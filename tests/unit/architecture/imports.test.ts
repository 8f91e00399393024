import { readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve, sep } from "node:path";
import { describe, expect, test } from "vitest";
import { browserFolders, stages, toolboxes } from "../../../src/pipeline.ts";

const src = resolve(import.meta.dirname, "../../../src");
const order: readonly string[] = stages.map(({ name }) => name);

interface Import {
  readonly file: string;
  readonly folder: string;
  readonly target: string;
  readonly typeOnly: boolean;
}

const imports = readdirSync(src, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .flatMap(importsOf);

function importsOf(file: string): Import[] {
  const code = readFileSync(join(src, file), "utf8");
  return [...code.matchAll(/^(?:import|export)\s+(type\s+)?[^;]*?\sfrom\s+"([^"]+)";/gms)].map(
    ([, type, target]) => ({
      file: file.replaceAll(sep, "/"),
      folder: folderOf(file),
      target: target!.startsWith(".")
        ? relative(src, resolve(src, file, "..", target!)).replaceAll(sep, "/")
        : target!,
      typeOnly: type !== undefined,
    }),
  );
}

function folderOf(path: string): string {
  return path.includes("/") || path.includes(sep) ? path.split(/[\\/]/)[0]! : "";
}

const isToolbox = (folder: string) => (toolboxes as readonly string[]).includes(folder);

/** Storage writes and reads the stages' own tables and lists: it knows what their rows are made of. */
const tables = new Set([
  "measures/column.ts",
  "measures/columns.ts",
  "estimates/cells.ts",
  "estimates/cellsFromColumns.ts",
  "estimates/tokenTable.ts",
  "phonology/kana.ts",
  "phonology/reading.ts",
]);

describe("the way of the data", () => {
  test("finds the imports it is about to judge", () => {
    expect(imports.filter(({ folder }) => order.includes(folder)).length).toBeGreaterThan(50);
  });

  test("a stage imports only earlier stages and toolboxes", () => {
    const wrong = imports.filter(({ folder, target }) => {
      const from = order.indexOf(folder);
      const to = order.indexOf(folderOf(target));
      return from >= 0 && to > from;
    });
    expect(wrong.map(({ file, target }) => `${file} imports ${target}`)).toEqual([]);
  });

  test("a toolbox imports no stage but for the tables it keeps and for types", () => {
    const wrong = imports.filter(
      ({ folder, target, typeOnly }) =>
        isToolbox(folder) && order.includes(folderOf(target)) && !typeOnly && !tables.has(target),
    );
    expect(wrong.map(({ file, target }) => `${file} imports ${target}`)).toEqual([]);
  });

  test("folders that run in a browser reach no Node module and no folder that does", () => {
    const bound = new Set<string>(browserFolders);
    const wrong = imports.filter(
      ({ folder, target, typeOnly }) =>
        bound.has(folder) &&
        !typeOnly &&
        (target.startsWith("node:") ||
          ["storage", "workers", "cli", "publish", "datasets"].includes(folderOf(target))),
    );
    expect(wrong.map(({ file, target }) => `${file} imports ${target}`)).toEqual([]);
  });

  test("only the storage toolbox, the site and the command line touch the disk", () => {
    const allowed = ["storage", "publish", "cli", "workers", ""];
    const wrong = imports.filter(
      ({ folder, target }) => /^node:fs/.test(target) && !allowed.includes(folder),
    );
    expect(wrong.map(({ file, target }) => `${file} imports ${target}`)).toEqual([]);
  });

  test("no source file grows beyond 250 lines, but for the wording of a language, which is one file", () => {
    const long = readdirSync(src, { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts") && file !== join("interface", "japanese.ts"))
      .map((file) => ({ file, lines: readFileSync(join(src, file), "utf8").split("\n").length }))
      .filter(({ lines }) => lines > 250);
    expect(long).toEqual([]);
  });
});
