import { expect, test } from "vitest";
import { navigationHtml } from "../../../src/publish/navigationHtml.ts";
import { sitePages } from "../../../src/publish/siteConfig.ts";

test("navigationHtml names every page once in each of its two forms and marks the one shown", () => {
  const { markup } = navigationHtml(sitePages, "timing");
  const links = [...markup.matchAll(/href="\/([^"]*)"/g)].map(([, file]) => file);
  const files = sitePages.map(({ file }) => (file === "index" ? "" : file));
  expect(links).toEqual([...files, ...files]);
  expect([...markup.matchAll(/href="\/([^"]*)" aria-current="page"/g)].map(([, file]) => file)).toEqual([
    "timing",
    "timing",
  ]);
  expect(markup).toContain("<summary>Pages: <strong>Timing</strong></summary>");
});

test("navigationHtml leaves out a group without pages", () => {
  const { markup } = navigationHtml([{ file: "index", name: "Start", group: "start" }], "index");
  expect(markup.match(/class="group"/g)).toHaveLength(2);
});
