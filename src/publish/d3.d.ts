/** The functions of d3 that this project calls by itself. */
declare module "d3" {
  export function ticks(start: number, stop: number, count: number): number[];
  export function group<T, K>(items: readonly T[], key: (item: T) => K): Map<K, T[]>;
  export function csvFormatRows(rows: readonly (readonly unknown[])[]): string;
  export function tsvFormatRows(rows: readonly (readonly unknown[])[]): string;
}
