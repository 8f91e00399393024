import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";

/** A folder of its own for one test, with these files in it; gone when the test ends. */
export function tempFolder(files: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), "morascope-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}

const kept: string[] = [];

/** A folder for all tests of one file; gone when the process ends. */
export function keptFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "morascope-"));
  if (kept.length === 0)
    process.once("exit", () => {
      for (const one of kept) rmSync(one, { recursive: true, force: true });
    });
  kept.push(folder);
  return folder;
}
