import * as messages from "../../messages/rules.ts";
import { expandSelector } from "../../phonology/phoneClasses.ts";
import { isVowel } from "../../phonology/phones.ts";
import { placeOf, possible, regionOf, scaleOf } from "./region.ts";
import { exceptionColumns, type JudgedRule, type RuleCut } from "./ruleSchema.ts";
import { isOfTokens } from "./tokenContrasts.ts";

/** What is wrong with a rule whose fields are each well-formed: impossible ranges, cuts that cannot be compared. */
export function checkRule(rule: JudgedRule): string[] {
  return [...rangeFaults(rule), ...cutFaults(rule)];
}

function rangeFaults({ contrast, holds }: JudgedRule): string[] {
  const scale = scaleOf(contrast);
  const whole = possible[scale];
  const named =
    holds.when === "between"
      ? [["holds.from", holds.from] as const, ["holds.to", holds.to] as const]
      : [["holds.value", holds.value] as const];
  const outside = named.filter(
    ([, value]) => value < whole.low || value > whole.high || (scale === "ratio" && value === 0),
  );
  if (outside.length > 0)
    return outside.map(([place, value]) => messages.outsidePossible(place, value, scale));
  if (holds.when === "between" && holds.from >= holds.to)
    return [messages.reversedRange(holds.from, holds.to)];
  const region = regionOf(holds, scale);
  const place = placeOf(whole, region);
  if (place === "holds") return [messages.alwaysHolds()];
  if (place === "fails" || region.low >= whole.high || region.high <= whole.low)
    return [messages.neverHolds()];
  const allSmall = region.smallHigh >= whole.high || region.smallLow <= whole.low;
  return allSmall && "negligible" in holds ? [messages.negligibleTooFar(holds.negligible!)] : [];
}

function cutFaults({ contrast, exceptions }: JudgedRule): string[] {
  if (isOfTokens(contrast)) {
    const names =
      contrast.kind === "vowel-separation"
        ? contrast.vowels
        : contrast.kind === "colouring"
          ? contrast.consonants
          : [];
    return [
      ...(exceptions.length > 0 ? [messages.noExceptionsByTokens(contrast.kind)] : []),
      ...[...names]
        .filter((name, i) => (names as readonly string[]).indexOf(name) < i)
        .map(messages.vowelTwice),
    ];
  }
  if (contrast.kind === "length-ratio")
    return exceptions.includes("length") ? [messages.exceptionTellsCuts("length", "exceptions")] : [];
  const cuts: readonly (readonly [string, RuleCut])[] =
    contrast.kind === "rate"
      ? [["contrast.of", contrast.of]]
      : [
          ["contrast.first", contrast.first],
          ["contrast.second", contrast.second],
        ];
  const faults: string[] = [];
  if (contrast.kind !== "duration-ratio")
    for (const [place, { where }] of cuts)
      if (!holdsVowels(where)) faults.push(messages.noVowels(`${place}.where`));
  if (contrast.kind === "rate") return faults;
  const telling = tellingColumns(contrast.first.where, contrast.second.where);
  if (telling.size === 0) faults.push(messages.sameCuts());
  const within = contrast.kind === "duration-ratio" ? contrast.within : [];
  for (const [place, columns] of [["exceptions", exceptions] as const, ["contrast.within", within] as const])
    for (const column of columns)
      if (telling.has(column)) faults.push(messages.exceptionTellsCuts(column, place));
  return faults;
}

function holdsVowels({ kind, vowel, phone }: RuleCut["where"]): boolean {
  if (kind === "consonant") return false;
  return [vowel, phone].every(
    (asked) => asked === undefined || expandSelector([asked].flat().join(",")).some(isVowel),
  );
}

/** Columns in which the two cuts ask for different values. */
function tellingColumns(first: RuleCut["where"], second: RuleCut["where"]): Set<string> {
  const asked = ({ vowel, phone, ...rest }: RuleCut["where"]): Readonly<Record<string, unknown>> => ({
    ...rest,
    phone: vowel ?? phone,
  });
  const [a, b] = [asked(first), asked(second)];
  const same = (column: string) => normal(a[column]) === normal(b[column]);
  return new Set([...exceptionColumns, "kind"].filter((column) => !same(column)));
}

function normal(value: unknown): string {
  if (value === undefined) return "any";
  if (typeof value === "boolean") return String(value);
  const names = [value as string | string[]].flat().join(",");
  try {
    return expandSelector(names).join(",");
  } catch {
    return names;
  }
}
