import { describe, expect, test } from "vitest";
import { escapeHtml, html } from "../../../src/publish/html.ts";

describe("html", () => {
  test("escapeHtml leaves no markup, no quote and no placeholder the framework would run", () => {
    expect(escapeHtml('<b a="1">${x}`&\'')).toBe("&lt;b a=&quot;1&quot;&gt;&#36;&#123;x}&#96;&amp;&#39;");
  });

  test("escapeHtml keeps the text on one line, so that it cannot end its block", () => {
    expect(escapeHtml("a\n\nb\r\nc\u2028d")).toBe("a b c d");
  });

  test("html`` escapes values, keeps markup made by itself, joins arrays and leaves nothing for null", () => {
    expect(html`<p>${"<i>"}${html`<b>x</b>`}${[1, "<"]}${null}${false}</p>`.markup).toBe(
      "<p>&lt;i&gt;<b>x</b>1&lt;</p>",
    );
  });
});
