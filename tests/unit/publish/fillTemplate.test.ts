import { expect, test } from "vitest";
import { fillTemplate } from "../../../src/publish/fillTemplate.ts";
import { html } from "../../../src/publish/html.ts";

test("fillTemplate fills parts, even with dollar signs, and throws on one it does not know", () => {
  expect(fillTemplate("a {{x}} b", { x: html`<b>$&</b>` })).toBe("a <b>$&</b> b");
  expect(() => fillTemplate("{{y}}", {})).toThrow("y");
});
