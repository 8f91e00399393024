const colours = new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, "g");

/**
 * What the framework complained of, without what is no fault: it takes a link with a query (`/length?by=position`)
 * for broken although the page is there. `pages` are the pages' paths, as `/length`.
 */
export function realComplaints(lines: readonly string[], pages: readonly string[]): string[] {
  const plain = lines.map((line) => line.replaceAll(colours, "").trim());
  const links = plain.filter((line) => line.startsWith("↳"));
  const broken = links.filter((line) => {
    const target = line.split("→").at(-1)!.trim();
    return !target.includes("?") || !pages.includes(target.split("?", 1)[0]!);
  });
  const other = plain.filter((line) => !line.startsWith("↳") && !/\d+ broken links?/.test(line));
  return [...other, ...broken];
}
