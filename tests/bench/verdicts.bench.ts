import { seededRandom } from "../../src/statistics/seededRandom.ts";
import { judgeSimulated, thirtyTokens } from "../unit/findings/rules/judgeSimulated.ts";
import { judgeableRules } from "../unit/findings/rules/shippedRules.ts";
import type { Size, Truth } from "../unit/findings/rules/simulateRule.ts";

// Draws corpora built to satisfy or to break each rule that can be judged, and prints the share judged rightly.
// Goals: 95 % with 20 speakers; with one speaker and 30 tokens, 95 % "too little evidence". The last column draws from
// the very edge of what counts as holding, and prints how often the rule is borne out all the same: 2.5 % would be an
// interval that keeps its level. Seeded, so that it repeats.

const draws = Number(process.env.DRAWS ?? 200);
const random = seededRandom(2);
const asked = process.env.RULES?.split(",");
const rules = (await judgeableRules()).filter(({ id }) => asked?.includes(id) ?? true);

function share(rule: (typeof rules)[number], truth: Truth, size: Size, wanted: string) {
  const others = new Map<string, number>();
  for (let draw = 0; draw < draws; draw++) {
    const found = judgeSimulated(rule, truth, size, random).verdict;
    if (found !== wanted) others.set(found, (others.get(found) ?? 0) + 1);
  }
  const wrong = [...others.values()].reduce((sum, count) => sum + count, 0);
  return { right: 1 - wrong / draws, others };
}

const percent = (part: number) => `${(100 * part).toFixed(1)} %`.padStart(9);
console.log(`Verdicts on corpora with a known truth, ${draws} draws each.`);
console.log(
  `${"".padEnd(38)}${"satisfies".padStart(9)}${"breaks".padStart(9)}${"too few".padStart(9)}${"edge".padStart(9)}  others`,
);
let worst = 1;
const edges: number[] = [];
for (const rule of rules) {
  const large = { speakers: 20, tokens: 60 };
  const small = thirtyTokens(rule);
  const found = [
    share(rule, "satisfies", large, "borne out"),
    share(rule, "breaks", large, "contradicted"),
    share(rule, "satisfies", small, "too little evidence"),
  ];
  worst = Math.min(worst, ...found.map(({ right }) => right));
  const others = found.flatMap(({ others: some }) => [...some].map(([name, count]) => `${name} ${count}`));
  const edge = share(rule, "edge", large, "borne out").right;
  edges.push(edge);
  console.log(
    `${rule.id.padEnd(38)}${found.map(({ right }) => percent(right)).join("")}${percent(edge)}  ${others.join(", ")}`,
  );
}
console.log(`Worst: ${percent(worst).trim()} (goal: 95 %)`);
const mean = edges.reduce((sum, edge) => sum + edge, 0) / edges.length;
console.log(`Borne out on the edge: ${percent(mean).trim()} on average`);
