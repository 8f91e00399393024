import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Served, serve } from "../../src/publish/serve.ts";
import { sitePages } from "../../src/publish/siteConfig.ts";
import { runPipeline } from "../../src/runPipeline.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { keptFolder } from "../helpers/tempFolder.ts";
import { launchBrowser } from "./browser.ts";
import { hostileDataset } from "./fixtures/hostileDataset.ts";
import { watchPage } from "./watchPage.ts";

let served: Served;
let browser: Browser;
beforeAll(async () => {
  const out = keptFolder();
  await runPipeline(runOptions([hostileDataset(keptFolder())], out, { report: true }));
  served = await serve({ site: join(out, "site") });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
});

describe("a dataset whose every text is an attack", () => {
  test.each(sitePages)("runs no script and reaches no other host on the page $file", async ({ file }) => {
    const page = await browser.newPage();
    const faults = watchPage(page, served.url);
    const response = await page.goto(`${served.url}${file === "index" ? "" : file}`, {
      waitUntil: "networkidle",
    });
    expect(response!.status()).toBe(200);
    await page.locator("details").evaluateAll((all) => {
      for (const one of all as HTMLDetailsElement[]) one.open = true;
    });
    expect(await page.evaluate("window.attacked ?? null"), "a script ran").toBeNull();
    expect(await page.locator("img[src='x'], svg[onload], iframe, a[href^='javascript:']").count()).toBe(0);
    expect(faults).toEqual([]);
    await page.close();
  });

  test("is shown as the text it is", async () => {
    const page = await browser.newPage();
    await page.goto(`${served.url}datasets`, { waitUntil: "networkidle" });
    expect(await page.locator("main").textContent()).toContain(`<script>window.attacked="name"</script>`);
    await page.close();
  });
});
