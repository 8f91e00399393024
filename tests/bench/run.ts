/** `npm run bench -- NAME`: runs one benchmark in a process of its own; without a name, lists them. */
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";

const folder = import.meta.dirname;
const ending = ".bench.ts";
const names = readdirSync(folder)
  .filter((file) => file.endsWith(ending))
  .map((file) => file.slice(0, -ending.length))
  .sort();
const [name, ...rest] = process.argv.slice(2);
if (name !== undefined && names.includes(name)) {
  const file = join(folder, `${name}${ending}`);
  const { status } = spawnSync(process.execPath, ["--expose-gc", "--import", "tsx", file, ...rest], {
    stdio: "inherit",
  });
  process.exit(status ?? 1);
}
if (name !== undefined) process.stderr.write(`There is no benchmark ${name}.\n`);
process.stdout.write(`Benchmarks: ${names.join(", ")}\nRun one with: npm run bench -- NAME\n`);
process.exit(name === undefined ? 0 : 2);
