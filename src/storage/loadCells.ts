import type { Cells } from "../estimates/cells.ts";
import { cellsFromColumns } from "../estimates/cellsFromColumns.ts";
import { readColumns } from "./readColumns.ts";
import { resultPath } from "./resultsFolder.ts";

/** The cells of a results folder, ready for the estimators. */
export async function loadCells(resultsFolder: string): Promise<Cells> {
  return cellsFromColumns(await readColumns(await resultPath(resultsFolder, "cells")));
}
