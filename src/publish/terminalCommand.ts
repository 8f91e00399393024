import type { Filter } from "../estimates/filter.ts";
import type { RatioOptions } from "../estimates/ratios.ts";

/** What stands in a command for the folder that a run wrote to. */
export const resultsPlaceholder = "RESULTS";

/** Level of the commands when none is given. */
const usualLevel = 0.95;

type Options = Readonly<Record<string, string | readonly string[] | undefined>>;

const plain = /^[\p{L}\p{N}_./:+][\p{L}\p{N}_./:+=-]*$/u;

/** A word of a command line as POSIX shells and PowerShell read it: bare, or in quotation marks within which nothing is special. */
function quoted(word: string): string {
  if (plain.test(word)) return word;
  return /["$`\\!\n]/.test(word) ? `'${word.replaceAll("'", "'\\''")}'` : `"${word}"`;
}

/** `npx morascope NAME RESULTS --option value …`; null where a value cannot be given, since a comma parts values. */
function command(name: string, options: Options, level: number): string | null {
  const words = ["npx", "morascope", name, resultsPlaceholder];
  for (const [option, value] of Object.entries(options)) {
    if (value === undefined) continue;
    const values = typeof value === "string" ? [value] : value;
    if (values.length === 0 || values.includes("")) return null;
    const joined = values.join(",");
    words.push(
      ...(joined.startsWith("-") ? [`--${option}=${quoted(joined)}`] : [`--${option}`, quoted(joined)]),
    );
  }
  return [...words, ...(level === usualLevel ? [] : ["--level", String(level)])].join(" ");
}

/** The options of a filter; null where the terminal has none for one of its fields. Label set and basis have rows of their own there. */
function filterOptions(filter: Filter): Options | null {
  const { vowel, before, after, speaker, dataset, position, ...rest } = filter;
  const { labelSet: _, devoicedBasis: __, length: ___, ...others } = rest;
  const hasOthers = Object.values(others).some((value) => value !== undefined);
  const names = [speaker, dataset, position].flat();
  if (hasOthers || names.some((name) => name?.includes(",") || name !== name?.trim())) return null;
  return { dataset, vowel, before, after, speaker, position };
}

/** The command that prints the devoicing rates of a cut. */
export function ratesCommand(filter: Filter, by: readonly string[], level: number): string | null {
  const options = filterOptions(filter);
  const length = filter.length ?? "all";
  if (options === null || typeof length !== "string" || !["short", "long", "all"].includes(length))
    return null;
  return command("rates", { ...options, length, ...byOption(by) }, level);
}

/** The command that prints the length ratios of a cut. */
export function ratiosCommand(
  { contrast, filter = {}, surroundings, level = usualLevel }: RatioOptions,
  by: readonly string[],
): string | null {
  const options = filterOptions(filter);
  if (options === null || filter.length !== undefined) return null;
  return command("ratios", { contrast, ...options, surroundings, ...byOption(by) }, level);
}

/** The command that answers a question about single vowels and consonants of one dataset; as `json` it prints each speaker too. */
export function explainCommand(what: string, dataset: string, level: number, format?: "json"): string | null {
  return command("explain", { what, dataset, format }, level);
}

const byOption = (by: readonly string[]) => (by.length === 0 ? {} : { by });
