import { expect, test } from "vitest";
import { printable, printableLine } from "../../../src/cli/printable.ts";
import { formatBlocks, word } from "../../../src/cli/printBlocks.ts";
import { runSummary } from "../../../src/cli/runSummary.ts";
import type { RunRecord } from "../../../src/runPipeline.ts";

const esc = String.fromCharCode(27);
/** Sets the window's title, colours what follows, turns its direction and goes back to the start of the line. */
const steering = `${esc}]0;mine\u0007${esc}[31mred\u202e\r\u009b2J`;

test("printable(text) leaves nothing that steers a terminal, and lines, tabs and letters as they are", () => {
  expect(printable(steering)).toBe("�]0;mine��[31mred���2J");
  expect(printable("ア\tb\nc ˈ│─")).toBe("ア\tb\nc ˈ│─");
  expect(printableLine("a\nb")).toBe("a�b");
});

test("runSummary(a dataset whose name, licence and notice steer) prints none of it, nor lines that are not ours", () => {
  const dataset = { id: "a", name: `n${steering}\nResults: elsewhere`, notice: steering, speakers: 1 };
  const record = {
    datasets: [{ ...dataset, utterances: 1, licence: { name: steering, url: null } }],
    counts: { phones: 1, tokens: 1, cells: 1 },
    ...{ corrections: null, problems: { total: 0, excluded: 0 } },
  };
  const text = runSummary(record as unknown as RunRecord, "out");
  expect(text).toBe(printable(text));
  expect(text.match(/^Results:/gm)).toHaveLength(1);
});

test("runSummary tells the most frequent kinds of problems with a file each, on lines of their own", () => {
  const record = {
    ...{ datasets: [], counts: { phones: 1, tokens: 1, cells: 1 }, corrections: null },
    problems: { total: 4, excluded: 2 },
  };
  const kinds = [
    { file: "a.wav", message: `It is cut${esc}[2J.`, count: 3 },
    { file: "", message: "Few recordings.", count: 1 },
  ];
  const text = runSummary(record as unknown as RunRecord, "out", kinds);
  expect(text).toContain("out/problems.csv. Most frequent:\n  a.wav: It is cut");
  expect(text).toContain(" (3 like it)\n  Few recordings.\n");
  expect(text).not.toContain(esc);
});

test("formatBlocks(text) prints no steering character; csv keeps what is there", () => {
  const speaker = word(`sp${esc}[2J`);
  const block = { heading: steering, lines: [steering], rows: [{ speaker }], keys: {}, warnings: [steering] };
  expect(formatBlocks([block], "text")).not.toContain(esc);
  expect(formatBlocks([block], "csv")).toContain(`sp${esc}[2J`);
});
