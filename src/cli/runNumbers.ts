import { InvalidArgumentError } from "commander";
import type { Share } from "../shardWork.ts";

/** Readers of options that are numbers or may be repeated. */
export function level(text: string): number {
  const value = Number(text);
  if (!(value >= 0.5 && value < 1))
    throw new InvalidArgumentError("It must be at least 0.5 and below 1, e.g. 0.95.");
  return value;
}

export function megabytes(text: string): number {
  const value = Number(text);
  if (!(Number.isInteger(value) && value >= 64))
    throw new InvalidArgumentError("It must be a whole number of MB, at least 64.");
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

export function append(value: string, list: readonly string[] = []): string[] {
  return [...list, value];
}
