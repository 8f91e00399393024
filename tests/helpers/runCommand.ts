import { Command } from "commander";
import { vi } from "vitest";

/** What a command line prints to standard output and standard error; its errors are thrown. */
export async function runCommand(
  register: (program: Command) => void,
  ...args: readonly string[]
): Promise<{ out: string; err: string }> {
  const written = { out: "", err: "" };
  const into = (stream: "out" | "err") => (text: string | Uint8Array) => {
    written[stream] += String(text);
    return true;
  };
  const spies = (["out", "err"] as const).map((stream) =>
    vi.spyOn(stream === "out" ? process.stdout : process.stderr, "write").mockImplementation(into(stream)),
  );
  const program = new Command().exitOverride();
  register(program);
  for (const command of program.commands) command.exitOverride();
  try {
    await program.parseAsync(args, { from: "user" });
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
  return written;
}
