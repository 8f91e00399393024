import * as v from "valibot";

const Payload = v.strictObject({ order: v.pipe(v.string(), v.maxLength(10_000_000)) });
export type Payload = v.InferOutput<typeof Payload>;

/** The order that a job of the queue carries; whoever can reach the server can put anything there. Throws an Error that says what is wrong. */
export function orderInPayload(data: unknown): string {
  const parsed = v.safeParse(Payload, data);
  if (parsed.success) return parsed.output.order;
  const issue = parsed.issues[0];
  throw new Error(`this job carries no order: ${v.getDotPath(issue) ?? "the whole"}: ${issue.message}`);
}
