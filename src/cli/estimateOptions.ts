import { type Command, InvalidArgumentError, Option } from "commander";
import type { Cells } from "../estimates/cells.ts";
import type { Dim } from "../estimates/dimensions.ts";
import type { Filter } from "../estimates/filter.ts";
import { cellDimensions } from "../measures/columns.ts";
import { nameUnknown, notAVowel } from "../messages/estimates.ts";
import { UserError } from "../messages/userError.ts";
import { expandSelector } from "../phonology/phoneClasses.ts";
import { isVowel } from "../phonology/phones.ts";

export const formats = ["text", "json", "csv"] as const;

/** Options that `rates` and `ratios` share, as commander gives them. */
export interface EstimateFlags {
  readonly vowel?: string;
  readonly before?: string;
  readonly after?: string;
  readonly speaker?: readonly string[];
  readonly dataset?: readonly string[];
  readonly position?: readonly string[];
  readonly by: readonly Dim[];
  readonly level: number;
  readonly format: (typeof formats)[number];
}

/** Columns of the cells that results can be cut by. */
const cuts: readonly Dim[] = [...cellDimensions, "timeBasis", "devoicedBasis"];
const positions = ["initial", "medial", "final", "only"];

export function addEstimateOptions(command: Command): Command {
  const phones = "phones or classes joined by commas, or pause";
  return command
    .argument("<results>", "results folder that `morascope run … --out` wrote")
    .option("--vowel <vowels>", "only these vowels, e.g. i,u")
    .option("--before <phones>", `only after these sounds: ${phones}`)
    .option("--after <phones>", `only before these sounds: ${phones}`)
    .option("--speaker <labels>", "only these speakers, joined by commas", list)
    .option("--dataset <names>", "only these datasets, joined by commas", list)
    .option(
      "--position <places>",
      `place in the stretch between pauses: ${positions.join(", ")}`,
      positionList,
    )
    .option("--by <columns>", `one row a value of these columns: ${cuts.join(", ")}`, cutList, [])
    .option("--level <share>", "confidence level of the intervals", level, 0.95)
    .addOption(new Option("--format <kind>", "how to print").choices(formats).default("text"));
}

/** The filter that the options describe. Refuses names that the results do not have: nothing would match them. */
export function filterOf(flags: EstimateFlags, cells: Cells): Filter {
  const { vowel, before, after, speaker, dataset, position } = flags;
  refuseUnknown("dataset", dataset, cells);
  refuseUnknown("speaker", speaker, cells);
  if (vowel !== undefined && !expandSelector(vowel).every(isVowel)) throw new UserError(notAVowel(vowel));
  return {
    ...(vowel === undefined ? {} : { vowel }),
    ...(before === undefined ? {} : { before }),
    ...(after === undefined ? {} : { after }),
    ...(speaker === undefined ? {} : { speaker }),
    ...(dataset === undefined ? {} : { dataset }),
    ...(position === undefined ? {} : { position }),
  };
}

function refuseUnknown(
  option: "dataset" | "speaker",
  names: readonly string[] | undefined,
  cells: Cells,
): void {
  const known = cells.dimensions[option].labels.filter((label) => label !== null);
  for (const name of names ?? [])
    if (!known.includes(name)) throw new UserError(nameUnknown(option, name, known));
}

function list(text: string): string[] {
  return text
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "");
}

function positionList(text: string): string[] {
  return list(text).map((name) => oneOf(name, positions));
}

function cutList(text: string): Dim[] {
  return list(text).map((name) => oneOf(name, cuts) as Dim);
}

function oneOf(name: string, allowed: readonly string[]): string {
  if (!allowed.includes(name))
    throw new InvalidArgumentError(`"${name}" is not one of ${allowed.join(", ")}.`);
  return name;
}

function level(text: string): number {
  const value = Number(text);
  if (!(value >= 0.5 && value < 1))
    throw new InvalidArgumentError("It must be at least 0.5 and below 1, e.g. 0.95.");
  return value;
}
