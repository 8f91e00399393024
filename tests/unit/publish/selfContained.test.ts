import { describe, expect, test } from "vitest";
import { checkPage, checkScript, checkStyle } from "../../../src/publish/selfContained.ts";

describe("checkScript", () => {
  test("passes relative imports and the names of XML vocabularies", () => {
    expect(checkScript('import "./a.js"; import("/b.js"); const n = "http://www.w3.org/2000/svg";')).toEqual(
      [],
    );
  });

  test.each([
    ['import x from "d3";', '"d3"'],
    ['export * from "npm:d3";', '"npm:d3"'],
    ['await import("https://example.org/x.js");', "https://example.org/x.js"],
    ['import "//example.org/x.js";', "//example.org/x.js"],
    ["fetch(`https://example.org/${1}`);", "https://example.org/"],
    ['new WebSocket("wss://example.org");', "wss://example.org"],
  ])("names what is wrong in %s", (code, named) => {
    expect(checkScript(code).join()).toContain(named);
  });

  test("throws on code that is no JavaScript", () => {
    expect(() => checkScript("let = ;;(")).toThrow();
  });
});

test("checkStyle names fonts, pictures and sheets from elsewhere, and passes those of the site", () => {
  expect(checkStyle("a{background:url(./x.svg)} @font-face{src:url('data:font/woff2,x')}")).toEqual([]);
  expect(
    checkStyle("@import 'https://example.org/a.css'; b{background:url(//example.org/x.png)}"),
  ).toHaveLength(2);
});

describe("checkPage", () => {
  test("lets readers follow links, but loads nothing from elsewhere", () => {
    expect(checkPage('<a href="https://example.org/">x</a><img src="./x.png">')).toEqual([]);
    for (const tag of [
      '<img alt="" src="https://example.org/x.png">',
      '<link rel="stylesheet" href="//example.org/a.css">',
      "<script src='https://example.org/a.js'></script>",
      '<form action="https://example.org/"></form>',
    ])
      expect(checkPage(tag), tag).toHaveLength(1);
  });

  test("finds the framework's error box and faults of inline scripts and styles", () => {
    expect(checkPage('<div class="observablehq--error">SyntaxError</div>')).toHaveLength(1);
    expect(
      checkPage(
        '<script type="module">import "d3"</script><style>@import "https://example.org/a.css"</style>',
      ),
    ).toHaveLength(2);
  });
});
