import type { ClosureSums } from "./closureDurations.ts";
import type { UnitCounts } from "./inventory.ts";
import type { TrainingAnswer } from "./training.ts";

/**
 * Adds up the answers of all parts of the recordings to one question, in the order given: the order decides the last
 * bit, so that it must not hang on who answered first.
 */
export function addAnswers(answers: readonly TrainingAnswer[]): TrainingAnswer {
  const [first, ...others] = answers;
  if (first === undefined) throw new RangeError("there is no answer to add up");
  const sum = structuredClone(first);
  for (const other of others) addTo(sum, other);
  return sum;
}

function addTo(sum: TrainingAnswer, other: TrainingAnswer): void {
  if (sum.kind === "survey" && other.kind === "survey") {
    addCounts(sum.survey.units, other.survey.units);
    addNumbers(sum.survey, other.survey);
  } else if (sum.kind === "first" && other.kind === "first") {
    addNumbers(sum.first, other.first);
    addNumbers(sum.first.statistics, { ...other.first.statistics, dims: 0 });
  } else if (sum.kind === "pass" && other.kind === "pass") {
    addNumbers(sum.pass, other.pass);
    addNumbers(sum.pass.statistics, { ...other.pass.statistics, dims: 0 });
  } else if (sum.kind === "closures" && other.kind === "closures") addClosures(sum.closures, other.closures);
  else throw new Error(`answers to different questions: ${sum.kind}, ${other.kind}`);
}

/** Adds every number and every array of numbers. */
function addNumbers(sum: object, other: object): void {
  const into = sum as Record<string, unknown>;
  for (const [name, value] of Object.entries(other)) {
    const own = into[name];
    if (typeof value === "number") into[name] = (own as number) + value;
    else if (value instanceof Float64Array)
      for (let i = 0; i < value.length; i++) (own as Float64Array)[i]! += value[i]!;
  }
}

function addCounts(sum: UnitCounts, other: UnitCounts): void {
  for (const [unit, count] of other) (sum as Map<string, number>).set(unit, (sum.get(unit) ?? 0) + count);
}

function addClosures(sum: ClosureSums, other: ClosureSums): void {
  for (const [unit, { frames, count }] of other) {
    const own = sum.get(unit) ?? { frames: 0, count: 0 };
    (sum as Map<string, { frames: number; count: number }>).set(unit, {
      frames: own.frames + frames,
      count: own.count + count,
    });
  }
}
