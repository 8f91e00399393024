import { readdir, readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { ruleFileMissing } from "../messages/rules.ts";
import { UserError } from "../messages/userError.ts";

/** Text of one rule file, with the name that errors show. */
export interface RuleText {
  readonly file: string;
  readonly json: string;
}

/** The rules of thumb that come with the project, by file name, ready for `parseRules`. */
export async function loadRules(): Promise<RuleText[]> {
  const folder = fileURLToPath(new URL("../../data/rules/", import.meta.url));
  const names = (await readdir(folder)).filter((name) => name.endsWith(".json")).sort();
  return Promise.all(
    names.map(async (name) => ({
      file: `data/rules/${name}`,
      json: await readFile(`${folder}/${name}`, "utf8"),
    })),
  );
}

/** Rule files of a user. Throws a UserError for one that cannot be read. */
export async function loadRuleFiles(paths: readonly string[]): Promise<RuleText[]> {
  return Promise.all(
    paths.map(async (file) => {
      try {
        return { file, json: await readFile(file, "utf8") };
      } catch {
        throw new UserError(ruleFileMissing(file));
      }
    }),
  );
}
