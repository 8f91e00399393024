import { describe, expect, test } from "vitest";
import { realComplaints } from "../../../src/publish/frameworkComplaints.ts";

describe("realComplaints", () => {
  const pages = ["/length"];
  test("lets a link with a query pass where the page is there", () => {
    expect(
      realComplaints(
        ["\u001b[33mWarning:\u001b[39m 1 broken link (3 validated)", "↳ /index → /length?by=position"],
        pages,
      ),
    ).toEqual([]);
  });

  test("keeps broken links and every other complaint", () => {
    expect(
      realComplaints(["↳ /index → /nowhere?by=position", "↳ /index → /length#gone", "npm failed"], pages),
    ).toEqual(["npm failed", "↳ /index → /nowhere?by=position", "↳ /index → /length#gone"]);
  });
});
