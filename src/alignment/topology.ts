import { type Phone, phoneTable } from "../phonology/phones.ts";
import type { GraphNode } from "./graph.ts";

/** What is modelled as one: a phone, or a devoiced vowel (`I`, `U`). Long vowels share the short ones' states. */
export type Unit = string;

export function unitOf(node: Pick<GraphNode, "phone" | "variant">): Unit {
  return node.variant === "devoiced" ? node.phone.toUpperCase() : node.phone;
}

/** A commoner sound that stands in where too few of the rare one were heard; followed until one is known. */
const standIns: Readonly<Record<Unit, Unit>> = {
  ky: "k",
  kw: "k",
  gy: "g",
  gw: "g",
  ty: "t",
  dy: "d",
  ny: "n",
  hy: "sh",
  fy: "f",
  by: "b",
  py: "p",
  vy: "v",
  v: "b",
  my: "m",
  ry: "r",
  j: "z",
  z: "s",
  ts: "s",
  ch: "sh",
  sh: "s",
  f: "h",
  h: "s",
  s: "h",
  I: "U",
  U: "f",
  p: "t",
  t: "k",
  k: "t",
  b: "d",
  g: "d",
  d: "r",
  r: "n",
  m: "n",
  n: "m",
  N: "n",
  w: "u",
  y: "i",
  cl: "t",
  i: "e",
  e: "i",
  u: "o",
  o: "u",
  a: "o",
};

export function standIn(unit: Unit): Unit | null {
  return standIns[unit] ?? null;
}

/**
 * Number of states of a unit in a row. Each lasts at least one frame, so this times 10 ms is the unit's time floor.
 * Stops have a closure and a burst, affricates a closure, a burst and frication.
 */
export function statesOf(unit: Unit): number {
  if (unit === "pause") return 1;
  if (unit === "I" || unit === "U") return 2;
  const { manner } = phoneTable[unit as Phone];
  return manner === "vowel" || manner === "affricate" || manner === "fricative" ? 3 : 2;
}
