import { formatDecimals } from "../../../src/findings/format.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { type ListenNumber, listenMeasure, listenNumbers } from "../../../src/publish/listenColumns.ts";
import { type ListenTable, numberAt } from "../../../src/publish/readListen.ts";
import { type NumbersColumn, numbersTable } from "../numbersTable.ts";

interface MeasureRow {
  readonly name: ListenNumber;
  readonly value: number;
  readonly unit: string;
  readonly about: string;
}

/** Everything that was measured of one sound, folded away. */
export function measuresTable(table: ListenTable, row: number): HTMLElement {
  const words = interfaceText().listen.table;
  const rows = (Object.keys(listenNumbers) as ListenNumber[]).flatMap((name): MeasureRow[] => {
    const value = numberAt(table, name, row);
    const { unit, about } = listenMeasure(name);
    return value === null ? [] : [{ name, value, unit: unit === null || unit === "1" ? "" : unit, about }];
  });
  const columns: NumbersColumn<MeasureRow>[] = [
    { name: words.column, value: ({ name }) => name },
    {
      name: words.value,
      value: ({ value }) => value,
      show: ({ name, value, unit }) =>
        `${formatDecimals(value, listenNumbers[name])}${unit === "" ? "" : `\u00a0${unit}`}`,
    },
    { name: words.meaning, value: ({ name, about }) => words.about(name) ?? about },
  ];
  return numbersTable("listen-sound", rows, columns);
}
