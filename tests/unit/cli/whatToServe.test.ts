import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { whatToServe } from "../../../src/cli/whatToServe.ts";
import * as messages from "../../../src/messages/publish.ts";
import { siteMarker } from "../../../src/publish/outputFolder.ts";
import { recallFolders, rememberFolders } from "../../../src/storage/datasetFolders.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";
import { sampleRun } from "../publish/sampleRun.ts";

async function results({ site = true } = {}): Promise<{ folder: string; recordings: string }> {
  const folder = tempFolder();
  const recordings = tempFolder();
  const cards = [
    inventCard({ id: "d", name: "D", audioHours: 1 }, { id: "s" }),
    inventCard({ id: "e", name: "E", audioHours: 1 }, { id: "s" }),
  ];
  writeFileSync(join(folder, "run.json"), JSON.stringify(sampleRun(cards)));
  if (site) {
    mkdirSync(join(folder, "site"));
    writeFileSync(join(folder, "site", siteMarker), "{}");
  }
  await rememberFolders(join(folder, ".cache"), { d: recordings });
  return { folder, recordings };
}

describe("whatToServe", () => {
  test("takes a folder that is no results folder for a report alone", async () => {
    const folder = tempFolder();
    expect(await whatToServe(folder, {})).toEqual({ site: folder, local: null, notes: [] });
    await expect(whatToServe(folder, { d: folder })).rejects.toThrow(messages.audioNeedsResults(folder));
  });

  test("finds the report in a results folder and the recordings where the run read them", async () => {
    const { folder, recordings } = await results();
    expect(await whatToServe(folder, {})).toEqual({
      site: join(folder, "site"),
      local: { results: folder, folders: { d: recordings } },
      notes: [messages.servedRecordings(["d"]), messages.servedWithoutRecordings(["e"])],
    });
  });

  test("forgets recordings that have gone, and takes those that are named", async () => {
    const { folder, recordings } = await results();
    rmSync(recordings, { recursive: true });
    const moved = tempFolder();
    expect((await whatToServe(folder, { d: moved })).local?.folders).toEqual({ d: moved });
    expect((await whatToServe(folder, {})).notes).toEqual([messages.servedWithoutRecordings(["d", "e"])]);
  });

  test("refuses another dataset's recordings, a folder that is not there, and results without a report", async () => {
    const { folder, recordings } = await results();
    await expect(whatToServe(folder, { x: recordings })).rejects.toThrow(
      messages.audioNotOfResults("x", ["d", "e"]),
    );
    const none = join(recordings, "none");
    await expect(whatToServe(folder, { d: none })).rejects.toThrow(messages.audioFolderMissing("d", none));
    const bare = (await results({ site: false })).folder;
    await expect(whatToServe(bare, {})).rejects.toThrow(messages.resultsWithoutReport(bare));
  });
});

test("recallFolders gives nothing where nobody remembers or what was kept is damaged", async () => {
  expect(await recallFolders(tempFolder())).toEqual({});
  expect(await recallFolders(tempFolder({ ".cache/dataset-folders.json": '{"d": 5' }))).toEqual({});
});
