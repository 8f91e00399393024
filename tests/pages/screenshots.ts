import { mkdir } from "node:fs/promises";
import path from "node:path";
import { serve } from "../../src/publish/serve.ts";
import { sitePages } from "../../src/publish/siteConfig.ts";
import { launchBrowser } from "./browser.ts";

/** Pictures of every page of a built report at two widths and two colour schemes, for a person to look at: `screenshots.ts SITE FOLDER [PAGE…]`. */
const [site, folder, ...only] = process.argv.slice(2);
if (site === undefined || folder === undefined)
  throw new Error("Give a built report and a folder for the pictures.");
await mkdir(folder, { recursive: true });
const server = await serve({ site });
const browser = await launchBrowser();
for (const colorScheme of ["light", "dark"] as const) {
  for (const width of [360, 1600]) {
    const context = await browser.newContext({
      viewport: { width, height: 900 },
      colorScheme,
      deviceScaleFactor: 1,
    });
    const page = await context.newPage();
    page.on("console", (message) => message.type() === "error" && console.log(message.text()));
    page.on("pageerror", (error) => console.log(String(error)));
    for (const { file } of sitePages) {
      if (only.length > 0 && !only.includes(file)) continue;
      await page.goto(server.url + (file === "index" ? "" : file), { waitUntil: "networkidle" });
      await page.waitForTimeout(300);
      await page.screenshot({
        path: path.join(folder, `${file}-${width}-${colorScheme}.png`),
        fullPage: true,
      });
    }
    await context.close();
  }
}
await browser.close();
await server.close();
