import { expect } from "vitest";
import { type OpenDataset, openDataset } from "../../../src/datasets/openDataset.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";
import { tone, wavBytes } from "../../helpers/wavBytes.ts";

/** A recording of a tenth of a second, enough where only its being there matters. */
export const wav = wavBytes([tone(440, 16000, 0.1)], 16000, "16");
export const lab = "0.00 0.03 k\n0.03 0.10 a\n";

/** Opens a folder of these files, made for one test. */
export function openFolder(files: Readonly<Record<string, string | Uint8Array>>): Promise<OpenDataset> {
  return openDataset(tempFolder(files));
}

/** Rules of the problems with the places they were found at. */
export function rulesOf({ problems }: OpenDataset): string[] {
  return problems.map(({ rule, file, line }) => `${rule} ${file}${line === null ? "" : `:${line}`}`);
}

/** Every problem says what, where and what to do. */
export function expectHelpful({ problems }: OpenDataset): void {
  for (const { message, wayOut, file } of problems) {
    expect(message.length).toBeGreaterThan(10);
    expect(wayOut.length).toBeGreaterThan(10);
    expect(file).not.toBe("");
  }
}
