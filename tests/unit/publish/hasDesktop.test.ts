import { expect, test } from "vitest";
import { hasDesktop } from "../../../src/publish/hasDesktop.ts";

test("hasDesktop is false in a pipeline, over a remote shell and on Linux without a display", () => {
  expect(hasDesktop("linux", {})).toBe(false);
  expect(hasDesktop("linux", { DISPLAY: ":0" })).toBe(true);
  expect(hasDesktop("linux", { WAYLAND_DISPLAY: "w" })).toBe(true);
  expect(hasDesktop("darwin", {})).toBe(true);
  expect(hasDesktop("darwin", { CI: "1" })).toBe(false);
  expect(hasDesktop("win32", { SSH_CONNECTION: "x" })).toBe(false);
});
