import { InvalidArgumentError } from "commander";
import { epochInvalid } from "../messages/run.ts";
import { UserError } from "../messages/userError.ts";
import type { Share } from "../shardWork.ts";
import { leastMemoryMb } from "../storage/leastMemory.ts";

/** Readers of options that are numbers or may be repeated. */
export function level(text: string): number {
  const value = Number(text);
  if (!(value >= 0.5 && value < 1))
    throw new InvalidArgumentError("It must be at least 0.5 and below 1, e.g. 0.95.");
  return value;
}

export function megabytes(text: string): number {
  const value = Number(text);
  if (!(Number.isInteger(value) && value >= leastMemoryMb))
    throw new InvalidArgumentError(`It must be a whole number of MB, at least ${leastMemoryMb}.`);
  return value;
}

export function threads(text: string): number {
  const value = Number(text);
  if (!(Number.isInteger(value) && value >= 1 && value <= 1024))
    throw new InvalidArgumentError("It must be a whole number from 1 to 1024.");
  return value;
}

export function seconds(text: string): number {
  const value = Number(text);
  if (!(value >= 1 && value <= 3600))
    throw new InvalidArgumentError("It must be a number of seconds from 1 to 3600.");
  return value;
}

export function wholeNumber(text: string): number {
  if (!/^\d{1,9}$/.test(text))
    throw new InvalidArgumentError("It must be a whole number of at most nine digits.");
  return Number(text);
}

export function share(text: string): Share {
  const [, part, of] = /^(\d{1,6})\/(\d{1,6})$/.exec(text) ?? [];
  if (part === undefined || Number(part) < 1 || Number(part) > Number(of))
    throw new InvalidArgumentError("It must be i/n, with i from 1 to n, e.g. 3/8.");
  return { part: Number(part), of: Number(of) };
}

/** The time that the results carry, in UTC; of a day alone its first moment. */
export function date(text: string): string {
  if (!isoDate.test(text) || Number.isNaN(Date.parse(text)) || !isDay(text.slice(0, 10)))
    throw new InvalidArgumentError("It must be a date like 2026-11-25 or 2026-11-25T09:00:00Z.");
  return new Date(text).toISOString();
}

const isoDate = /^\d{4}-\d\d-\d\d(T\d\d:\d\d(:\d\d(\.\d{1,9})?)?(Z|[+-]\d\d:\d\d))?$/;

/** Whether the calendar holds the day: a date of 30 February would be taken as one of March. */
function isDay(day: string): boolean {
  return new Date(`${day}T00:00:00Z`).toISOString().startsWith(day);
}

/** The time now, or that of SOURCE_DATE_EPOCH (seconds since 1970), by which builds are made to repeat. Throws UserError for a text that is none. */
export function defaultDate(epochSec: string | undefined): string {
  if (epochSec === undefined || epochSec === "") return new Date().toISOString();
  const seconds = Number(epochSec);
  if (!/^\d+$/.test(epochSec) || seconds > mostEpochSec) throw new UserError(epochInvalid(epochSec));
  return new Date(seconds * 1000).toISOString();
}

/** The last second of the year 9999. */
const mostEpochSec = 253_402_300_799;

export function append(value: string, list: readonly string[] = []): string[] {
  return [...list, value];
}
