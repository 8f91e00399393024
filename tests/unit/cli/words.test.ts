import { expect, test } from "vitest";
import { registerWords } from "../../../src/cli/words.ts";
import { UserError } from "../../../src/messages/userError.ts";
import { lookUpTooLong } from "../../../src/messages/words.ts";
import { runCommand } from "../../helpers/runCommand.ts";

test("words --look-up refuses what is longer than any word, before it reads anything", async () => {
  const run = runCommand(registerWords, "words", "no-results", "--look-up", "か".repeat(101));
  await expect(run).rejects.toThrow(new UserError(lookUpTooLong(101, 100)));
});
