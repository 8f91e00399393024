/**
 * `npm test`: style, types, then every test, each step with its count. Sets up a browser where there is none.
 * Ends with one line `N passed, N failed, N skipped`.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { provideChromium } from "./pages/provideChromium.ts";

const root = new URL("..", import.meta.url).pathname;
const failures: string[] = [];

function step(name: string, command: string, args: readonly string[], env: NodeJS.ProcessEnv = {}): void {
  const startedAt = performance.now();
  process.stdout.write(`\n── ${name}\n`);
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, ...env },
  });
  process.stdout.write(
    `── ${name}: ${status === 0 ? "fine" : "failed"} (${((performance.now() - startedAt) / 1000).toFixed(1)} s)\n`,
  );
  if (status !== 0) failures.push(name);
}

const chromium = await provideChromium();
process.stdout.write(`${chromium.message}\n`);
if (chromium.path === null) process.exit(1);

step("style", "npx", ["--no-install", "biome", "check", "."]);
step("types", "npx", ["--no-install", "tsc", "-p", "."]);

const reports = mkdtempSync(join(tmpdir(), "morascope-tests-"));
const report = join(reports, "report.json");
step(
  "tests",
  "npx",
  ["--no-install", "vitest", "run", "--reporter=default", "--reporter=json", `--outputFile.json=${report}`],
  {
    MORASCOPE_CHROMIUM: chromium.path,
    TZ: "UTC",
  },
);

const counts = readCounts(report);
rmSync(reports, { recursive: true, force: true });
if (counts.passed === 0) failures.push("no test ran");
if (failures.length > 0) process.stdout.write(`\nfailed: ${failures.join(", ")}\n`);
process.stdout.write(`\n${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped\n`);
process.exit(failures.length === 0 ? 0 : 1);

interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
  readonly testResults: readonly {
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string }[];
  }[];
}

function readCounts(path: string): { passed: number; failed: number; skipped: number } {
  try {
    const json = JSON.parse(readFileSync(path, "utf8")) as Report;
    // a file that does not even load has no failed test of its own
    const broken = json.testResults.filter(
      ({ status, assertionResults }) =>
        status === "failed" && assertionResults.every((test) => test.status !== "failed"),
    );
    return {
      passed: json.numPassedTests,
      failed: json.numFailedTests + broken.length,
      skipped: json.numPendingTests + json.numTodoTests,
    };
  } catch {
    return { passed: 0, failed: 1, skipped: 0 };
  }
}
