import { join } from "node:path";
import { expect, test } from "vitest";
import { noShares, settingsBroken } from "../../src/messages/shards.ts";
import { readShareSettings } from "../../src/runShare.ts";
import { tempFolder } from "../helpers/tempFolder.ts";

test("readShareSettings(what no share of this version wrote) names file and field, and the way out", async () => {
  const folder = tempFolder({ ".shares.json": '{"datasets":[]}' });
  const path = join(folder, ".shares.json");
  const broken = settingsBroken(path, "card", "");
  await expect(readShareSettings(folder)).rejects.toThrow(broken.slice(0, broken.indexOf("card") + 4));
  const empty = tempFolder();
  await expect(readShareSettings(empty)).rejects.toThrow(noShares(empty));
});
