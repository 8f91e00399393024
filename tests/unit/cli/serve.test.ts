import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { openSite } from "../../../src/cli/serve.ts";
import { servedToNetwork } from "../../../src/messages/publish.ts";
import { siteMarker } from "../../../src/publish/outputFolder.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

test.each([
  ["127.0.0.2", false],
  ["0.0.0.0", true],
])("openSite on %s warns of the network: %s", async (host, warns) => {
  const site = tempFolder();
  writeFileSync(join(site, siteMarker), "{}");
  const before = { SIGINT: process.listenerCount("SIGINT"), SIGTERM: process.listenerCount("SIGTERM") };
  const told = vi.spyOn(process.stderr, "write").mockReturnValue(true);
  const out = vi.spyOn(process.stdout, "write").mockReturnValue(true);
  const served = await openSite(site, 0, { host, browser: false });
  const lines = told.mock.calls.map(([text]) => text);
  for (const spy of [told, out]) spy.mockRestore();
  await served.close();
  for (const signal of ["SIGINT", "SIGTERM"] as const)
    for (const listener of process.listeners(signal).slice(before[signal]))
      process.removeListener(signal, listener);
  expect(lines.includes(`${servedToNetwork(host)}\n`)).toBe(warns);
});
