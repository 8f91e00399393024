import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { contentPolicy } from "../../../src/publish/contentPolicy.ts";

const page = "<html><body><script>a()</script><script src='./b.js'></script></body></html>";

test("contentPolicy(page) allows a page's own inline scripts by hash, and no other host for anything", () => {
  const hash = createHash("sha256").update("a()").digest("base64");
  const policy = contentPolicy(page);
  expect(policy).toContain(`script-src 'self' 'sha256-${hash}'`);
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toMatch(/https?:|\*|unsafe-eval/);
});
