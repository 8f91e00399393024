/** A number with its noun: 1 recording, 2,000 recordings. `many` where the plural is not the noun with an s. */
export function amount(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString("en")} ${count === 1 ? one : many}`;
}
