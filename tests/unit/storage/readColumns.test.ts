import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { damagedTable, tableDamaged } from "../../../src/messages/results.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { openDatabase } from "../../../src/storage/duckdb.ts";
import { readColumns, readPieces, rowsOfTable } from "../../../src/storage/readColumns.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

const random = seededRandom(7);
const noise = Buffer.from(Array.from({ length: 1000 }, () => random.below(256)));

test.each([
  ["empty", Buffer.alloc(0)],
  ["of random bytes", noise],
  ["cut short", Buffer.from("PAR1 and what follows it")],
  ["of a length that cannot be", Buffer.from("PAR1....\xff\xff\xff\x7fPAR1", "latin1")],
])("a table that is %s is named as damaged, by our reader and by the database", async (_, bytes) => {
  const path = join(tempFolder(), "cells.parquet");
  writeFileSync(path, bytes);
  const damaged = expect.objectContaining({
    message: expect.stringContaining(tableDamaged(path, "").split("(")[0]!),
    exitCode: 2,
  });
  await expect(readColumns(path)).rejects.toThrow(damaged);
  await expect(readPieces(path, ["a"]).next()).rejects.toThrow(damaged);
  await expect(rowsOfTable(path)).rejects.toThrow(damaged);
  const connection = await openDatabase(":memory:", 64);
  const error = await connection.run(`from read_parquet('${path}')`).catch((reason: unknown) => reason);
  connection.closeSync();
  expect(damagedTable(error)).toContain(`${path} is damaged`);
});

test("damagedTable(any other error) is null", () => {
  expect(damagedTable(new Error("the folder 'a' is full"))).toBeNull();
  expect(damagedTable("text")).toBeNull();
});
