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

  test("throws on a page of another shape instead of leaving it unfinished", () => {
    const wrong = { description: "d", lang: "en" };
    expect(() => finishPage("<html lang='x'><body>", wrong)).toThrow("changed its shape");
  });
});
