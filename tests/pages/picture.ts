import { resolve } from "node:path";
import { serve } from "../../src/publish/serve.ts";
import { launchBrowser } from "./browser.ts";

/** Takes the README's picture from a built report of the demo: `picture.ts SITE`. */
const [site] = process.argv.slice(2);
if (site === undefined) throw new Error("Give the site of a run over the demo.");
const server = await serve({ site });
const browser = await launchBrowser();
const page = await browser.newPage({
  viewport: { width: 1200, height: 1180 },
  colorScheme: "light",
  deviceScaleFactor: 1,
});
await page.goto(server.url, { waitUntil: "networkidle" });
await page.waitForTimeout(500);
await page.screenshot({ path: resolve(import.meta.dirname, "../../reports/picture.png") });
await browser.close();
await server.close();
