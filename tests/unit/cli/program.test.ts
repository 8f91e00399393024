import { spawnSync } from "node:child_process";
import { readFileSync, utimesSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { tempFolder } from "../../helpers/tempFolder.ts";

const root = resolve(import.meta.dirname, "../../..");
const program = join(root, "src/cli/program.js");

/** A folder like ours: `src/main.ts` says a word of another module, and where it stands itself. */
function smallProject(): string {
  return tempFolder({
    "package.json": '{"type":"module"}',
    "src/parts/word.ts": 'export const word: string = "first";\n',
    "src/main.ts":
      'import { word } from "./parts/word.ts";\n\nexport function say(): string {\n  return word + new URL("..", import.meta.url).pathname;\n}\n\nexport function fail(): void {\n  throw new Error("here");\n}\n',
  });
}

/** Compiles in a process of its own and evaluates `use` of the compiled module. */
function compiled(folder: string, places: readonly string[], use: string): string {
  const code = `
    process.setSourceMapsEnabled(true);
    const { compiledProgram } = await import(${JSON.stringify(program)});
    const url = await compiledProgram("src/main.ts", ${JSON.stringify({ root: folder, places })});
    const main = url === null ? null : await import(url);
    process.stdout.write(String(await (${use})(main, url)));`;
  const { stdout, stderr } = spawnSync(process.execPath, ["--input-type=module", "-e", code], {
    encoding: "utf8",
  });
  return stdout === "" ? stderr : stdout;
}

describe("compiledProgram", () => {
  test("gives a program that stands, for its own eyes, where its source stands", () => {
    const folder = smallProject();
    const said = compiled(folder, [join(folder, "cache")], "(main) => main.say()");
    expect(said).toBe(`first${folder}/`);
  });

  test("is compiled once, and again when a byte of a source changes, size and time being the same", () => {
    const folder = smallProject();
    const places = [join(folder, "cache")];
    const where = "(main, url) => main.say().slice(0, 5) + url";
    const first = compiled(folder, places, where);
    expect(compiled(folder, places, where)).toBe(first);
    const file = join(folder, "src/parts/word.ts");
    const changed = readFileSync(file, "utf8").replace("first", "other");
    writeFileSync(file, changed);
    utimesSync(file, 1, 1);
    const second = compiled(folder, places, where);
    expect(second.slice(0, 5)).toBe("other");
    expect(dirname(second.slice(5))).not.toBe(dirname(first.slice(5)));
  });

  test("is kept in the next place where the first cannot be written, and is null where none can", () => {
    const folder = smallProject();
    const noFolder = join(folder, "package.json");
    const where = "(main, url) => url";
    expect(compiled(folder, [noFolder, join(folder, "mine")], where)).toMatch(
      /\/mine\/program-\w+\/main\.js$/,
    );
    expect(compiled(folder, [noFolder], where)).toBe("null");
  });

  test("names the source file and line in an error", () => {
    const folder = smallProject();
    const stack = compiled(
      folder,
      [join(folder, "cache")],
      "(main) => { try { main.fail(); } catch (error) { return error.stack; } }",
    );
    expect(stack).toContain(`${folder}/src/main.ts:8:`);
  });
});
