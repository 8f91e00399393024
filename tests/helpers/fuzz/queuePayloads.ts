import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { UserError } from "../../../src/messages/userError.ts";
import { type Order, writeOrder } from "../../../src/shards/orders.ts";
import { type OrderAnswer, runOrder } from "../../../src/shards/runOrder.ts";
import { orderInPayload } from "../../../src/workers/payload.ts";
import { tone, wavBytes } from "../wavBytes.ts";
import type { FuzzedReader } from "./checkReader.ts";
import { spoiltText } from "./mutations.ts";

/** What a worker gets from a queue that strangers can reach: every kind of order, spoilt, and things that are none. */
export function payloadReader(at: string): FuzzedReader {
  const root = join(at, "queue", "root");
  mkdirSync(root, { recursive: true });
  const secret = join(at, "queue", "outside.txt");
  writeFileSync(secret, "not for workers");
  const file = join(root, "a.wav");
  writeFileSync(file, wavBytes([tone(300, 8000, 0.3)], 8000, "16"));
  const input = fc.oneof(
    { weight: 3, arbitrary: spoiltText(ordersOn(root, file)).map((order) => ({ order })) },
    { weight: 6, arbitrary: spoiltOrder(ordersOn(root, file), root).map((order) => ({ order })) },
    { weight: 1, arbitrary: fc.anything() },
    { weight: 1, arbitrary: fc.anything().map((order) => ({ order })) },
  );
  const reader: FuzzedReader<unknown> = {
    name: "queue payloads",
    input,
    read: async (data) => {
      // no case finds the parts of another
      for (const name of readdirSync(root))
        if (name !== "a.wav") rmSync(join(root, name), { recursive: true, force: true });
      const answer = await answerTo(data, root);
      const outside = readdirSync(join(at, "queue")).sort();
      if (outside.join() !== "outside.txt,root" || readFileSync(secret, "utf8") !== "not for workers")
        throw new Error(`written outside the root: ${outside}`);
      return "refused" in answer ? [{ rule: "refused", message: answer.refused }] : [];
    },
  };
  return reader as FuzzedReader;
}

/** An order that is JSON still, with one to three of its values replaced. */
function spoiltOrder(samples: readonly string[], root: string): fc.Arbitrary<string> {
  const path = fc.constantFrom("/etc/passwd", `${root}/../outside.txt`, `${root}/none/..`, "", "a\0b", root);
  const value = fc.oneof(
    path,
    fc.jsonValue(),
    fc.constantFrom(-1, 1.5, 1e308, null, [], {}, "b".repeat(64), "__proto__"),
    fc.constantFrom({ $number: "NaN" }, { $array: "Float64Array", bytes: "AAAA" }, { $array: "constructor" }),
  );
  const changes = fc.array(fc.tuple(fc.nat(), value), { minLength: 0, maxLength: 3 });
  return fc.tuple(fc.constantFrom(...samples), changes).map(([sample, changed]) => {
    const order: unknown = JSON.parse(sample);
    for (const [at, other] of changed) {
      const places = placesIn(order);
      const { holder, name } = places[at % places.length]!;
      holder[name] = structuredClone(other);
    }
    return JSON.stringify(order);
  });
}

/** Every value inside another, with what holds it. */
function placesIn(value: unknown): { holder: Record<string, unknown>; name: string }[] {
  if (typeof value !== "object" || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((name) => [{ holder, name }, ...placesIn(holder[name])]);
}

/** Anything but a worker's answer, or a refusal of what is no order, is a crash. */
async function answerTo(data: unknown, root: string): Promise<OrderAnswer> {
  try {
    return JSON.parse(await runOrder(orderInPayload(data), { roots: [root] })) as OrderAnswer;
  } catch (error) {
    const { message } = error as Error;
    throw /^this (job carries|is) no order: ./.test(message) ? new UserError(message) : error;
  }
}

function ordersOn(root: string, file: string): string[] {
  const key = "a".repeat(64);
  const numbers = Float64Array.of(1, Number.NaN);
  const common = { cache: join(root, "cache"), key, read: key, hear: key };
  const normalisations: [string, { mean: typeof numbers; scale: typeof numbers }][] = [
    ["s", { mean: numbers, scale: numbers }],
  ];
  const corpus = [{ hear: key, read: key, at: [0, 1] }];
  const recording = { audio: "a.wav", file, hash: null, audioStartSec: null, audioEndSec: 0.2 };
  const recordings = [{ ...recording, features: true, voicing: true }, null];
  const timed = { align: key, fitting: { aligned: [0], calibration: null } };
  const voice = { voicedFrames: 1, voicelessFrames: 2, voiceDb: Number.NaN, islandPeriodicity: 0.5 };
  const speaker = {
    ...{ ...voice, islandLowDb: 1, islandMidDb: 2, f0MedianHz: 120, f0Range: { low: 60, high: 400 } },
    classifier: { weights: [1, -0], bias: Number.NaN },
  };
  const orders: Order[] = [
    { kind: "hear", cache: common.cache, code: key, recordings },
    { kind: "train", cache: common.cache, key, question: key, corpus, normalisations },
    { kind: "adapt", cache: common.cache, key, corpus, normalisations },
    { kind: "align", ...common, model: key, at: [0], normalisations },
    { kind: "voices", ...common, ...timed, at: [0] },
    { kind: "learn", cache: common.cache, key, samples: [["s", [{ voices: key, at: [0] }]]] },
    { kind: "measure", ...common, ...timed, recordings, speakers: [["s", speaker]] },
  ];
  return orders.map(writeOrder);
}
