import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/** SHA-256 of every file of a results folder by its path, hidden ones included; what is kept for later runs apart. */
export function filesOf(results: string): Map<string, string> {
  const files = new Map<string, string>();
  for (const file of readdirSync(results, { recursive: true, encoding: "utf8" }).sort()) {
    const path = join(results, file);
    if (file.startsWith(".cache") || statSync(path).isDirectory()) continue;
    files.set(file, createHash("sha256").update(readFileSync(path)).digest("hex"));
  }
  return files;
}

/** Files that differ, are missing, or should not be there. */
export function differences(
  expected: ReadonlyMap<string, string>,
  found: ReadonlyMap<string, string>,
): string[] {
  const names = new Set([...expected.keys(), ...found.keys()]);
  return [...names].filter((name) => expected.get(name) !== found.get(name));
}
