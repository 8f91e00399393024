import type { Command } from "commander";
import { expect, test, vi } from "vitest";
import { main } from "../../../src/cli/main.ts";
import { machineRefused } from "../../../src/messages/machine.ts";

const fail = () => {
  throw Object.assign(new Error("ENOSPC: no space left, write 'a\u001b[2Jb'"), {
    ...{ code: "ENOSPC", syscall: "write", path: "a\u001b[2Jb" },
  });
};
vi.mock("../../../src/cli/commands.ts", () => ({
  commands: [
    {
      ...{ name: "fill", summary: "", takes: "" },
      load: async () => (program: Command) => program.command("fill").action(fail),
    },
  ],
}));

test("main tells of a machine that could not without characters that would steer a terminal", async () => {
  let told = "";
  const spy = vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    told += String(text);
    return true;
  });
  const before = process.exitCode;
  await main(["node", "morascope", "fill"]);
  spy.mockRestore();
  expect(process.exitCode).toBe(machineRefused);
  process.exitCode = before;
  expect(told).toContain("a�[2Jb");
  expect(told).not.toContain("\u001b");
});
