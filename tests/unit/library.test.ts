import { expect, test } from "vitest";
import * as sources from "../../src/library.ts";

test("import {…} from the package gives every name that the library's sources give", async () => {
  const names: string = "morascope";
  const compiled = (await import(names)) as Record<string, unknown>;
  expect(Object.keys(compiled).sort()).toEqual(Object.keys(sources).sort());
  for (const [name, value] of Object.entries(sources)) expect(typeof compiled[name]).toBe(typeof value);
});
