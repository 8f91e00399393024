import { isVoiceless, type Phone } from "../phonology/phones.ts";

/** How a phone is spoken: as written, or (i and u) without voice. An aid to alignment, never evidence of devoicing. */
export type Variant = "plain" | "devoiced";

/** One phone that the speaker may have said. */
export interface GraphNode {
  readonly phone: Phone;
  readonly long: boolean;
  readonly variant: Variant;
  /** Number of the part it comes from, counted through the list and all choices in writing order; −1: an edge pause. */
  readonly source: number;
  /** Nodes that may follow, each greater than this node's own number. */
  readonly next: readonly number[];
  /** Whether the utterance may end here. */
  readonly last: boolean;
}

/** What may have been said: a directed graph without cycles; arcs point to later nodes. */
export interface PhoneGraph {
  readonly nodes: readonly GraphNode[];
  /** Nodes with which the utterance may begin. */
  readonly entries: readonly number[];
}

/** One place in an utterance: a phone (a pause that may be left out), or a choice between whole stretches. */
export type GraphPart =
  | { readonly phone: Phone; readonly long?: boolean; readonly optional?: boolean }
  | { readonly choices: readonly (readonly GraphPart[])[] };

export interface GraphOptions {
  /**
   * Where short /i/ and /u/ may also be spoken without voice: after a voiceless consonant before a voiceless one or
   * a pause (`voiceless`, the default), after any voiceless consonant (`wide`), or nowhere (`never`).
   */
  readonly devoicing?: "voiceless" | "wide" | "never";
  /** Let the recording begin and end with a stretch without speech. Default true. */
  readonly edgePauses?: boolean;
}

type Draft = { -readonly [K in keyof GraphNode]: GraphNode[K] } & { next: number[] };

/** Builds the graph of an utterance from its parts. */
export function makePhoneGraph(parts: readonly GraphPart[], options: GraphOptions = {}): PhoneGraph {
  const { devoicing = "voiceless", edgePauses = true } = options;
  const nodes: Draft[] = [];
  const entries: number[] = [];
  let source = 0;

  /** Nodes from which the next part is reached; −1 stands for the start. */
  type Ends = readonly number[];

  function add(phone: Phone, long: boolean, variant: Variant, from: number, ends: Ends): number {
    const at = nodes.push({ phone, long, variant, source: from, next: [], last: false }) - 1;
    for (const end of ends) (end < 0 ? entries : nodes[end]!.next).push(at);
    return at;
  }

  function addPart(part: GraphPart, ends: Ends): Ends {
    if ("choices" in part) return part.choices.flatMap((stretch) => addAll(stretch, ends));
    const from = source++;
    const { phone, long = false, optional = false } = part;
    const added = [add(phone, long, "plain", from, ends)];
    if ((phone === "i" || phone === "u") && !long && devoicing !== "never") {
      const before = ends.filter((end) => end >= 0 && isVoiceless(nodes[end]!.phone));
      if (before.length > 0) added.push(add(phone, false, "devoiced", from, before));
    }
    return optional ? [...added, ...ends] : added;
  }

  function addAll(stretch: readonly GraphPart[], ends: Ends): Ends {
    return stretch.reduce<Ends>((reached, part) => addPart(part, reached), ends);
  }

  let ends: Ends = [-1];
  if (edgePauses) ends = [add("pause", false, "plain", -1, ends), -1];
  ends = addAll(parts, ends);
  if (edgePauses) ends = [add("pause", false, "plain", -1, ends), ...ends];
  for (const end of ends) if (end >= 0) nodes[end]!.last = true;
  if (devoicing === "voiceless") keepVoicelessSurroundings(nodes);
  return { nodes, entries };
}

/** Takes away the arcs from a devoiced vowel to a voiced sound. */
function keepVoicelessSurroundings(nodes: readonly Draft[]): void {
  for (const node of nodes) {
    if (node.variant !== "devoiced") continue;
    node.next = node.next.filter((to) => nodes[to]!.phone === "pause" || isVoiceless(nodes[to]!.phone));
  }
}
