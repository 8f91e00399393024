import { describe, expect, test } from "vitest";
import { finishPage } from "../../../src/publish/finishPage.ts";

const page =
  '<!DOCTYPE html>\n<html>\n<head><meta name="viewport" content="width=device-width, maximum-scale=1"></head><body><script>a()</script></body></html>';

describe("finishPage", () => {
  test("sets language, description and policy, and lets readers zoom", () => {
    const done = finishPage(page, { description: "What it is", lang: "en" });
    expect(done).toContain('<html lang="en">');
    expect(done).toContain('content="What it is"');
    expect(done).not.toContain("maximum-scale");
    expect(done).toContain("Content-Security-Policy");
  });

  test("asks pictures of sounds for the words of the page's language", () => {
    const card = '<img class="token-card" src="./_file/a.1f.svg" alt="x">';
    const other = '<img src="./_file/b.svg">';
    const within = (lang: string) =>
      finishPage(page.replace("<body>", `<body>${card}${other}`), { description: "", lang });
    expect(within("ja")).toContain('src="./_file/a.1f.svg#ja" alt="x"');
    expect(within("ja")).toContain(other);
    expect(within("en")).toContain(card);
  });

  test("throws on a page of another shape instead of leaving it unfinished", () => {
    const wrong = { description: "d", lang: "en" };
    expect(() => finishPage("<html lang='x'><body>", wrong)).toThrow("changed its shape");
  });
});
