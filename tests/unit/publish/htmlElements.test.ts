import { expect, test } from "vitest";
import { htmlElements } from "../../../src/publish/htmlElements.ts";

test("htmlElements takes what looks like an element inside an attribute, a comment or a script for none", () => {
  const html = `<p title="<script>a()</script>" data-x='<img src="//x">'>t</p><!-- <script>b()</script> --><script type=module>c("<script>")</script>`;
  const shown = htmlElements(html).filter(({ name }) => !["html", "head", "body"].includes(name));
  expect(shown.map(({ name, content }) => [name, content])).toEqual([
    ["p", ""],
    ["script", 'c("<script>")'],
  ]);
  expect(shown[0]!.attributes.get("title")).toBe("<script>a()</script>");
});
