import type { CslItem } from "./cslItems.ts";

const special: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "{": "\\{",
  "}": "\\}",
  "~": "\\textasciitilde{}",
  "^": "\\textasciicircum{}",
};

/** Text in which nothing is a command of TeX; letters of every script stay as they are (UTF-8). */
export function escapeTex(text: string): string {
  return text.replace(/[\\{}~^]|[&%$#_]/g, (sign) => special[sign] ?? `\\${sign}`).replace(/\s+/g, " ");
}

/** An address as BibTeX's `url` field takes it: as it is, with what would end the field encoded. */
function plainUrl(url: string): string {
  return url.replace(/[{}\\\s]/g, (sign) => encodeURIComponent(sign));
}

const day = (parts: readonly number[]) => parts.map((part) => String(part).padStart(2, "0")).join("-");

function entry(item: CslItem): string {
  const key = item.id.replace(/[^\w:-]/g, "-");
  const issued = item.issued?.["date-parts"][0];
  const seen = item.accessed?.["date-parts"][0];
  const fields = [
    ["title", `{${escapeTex(item.title)}}`],
    ["howpublished", item["container-title"] && escapeTex(item["container-title"])],
    ["year", issued && String(issued[0])],
    ["date", issued && day(issued)],
    ["version", item.version && escapeTex(item.version)],
    ["url", item.URL && plainUrl(item.URL)],
    ["urldate", seen && day(seen)],
    ["note", item.note && escapeTex(item.note)],
  ].flatMap(([name, value]) => (value ? [`  ${name} = {${value}},`] : []));
  return [`@misc{${key},`, ...fields, "}"].join("\n");
}

/** Entries as a BibTeX file (UTF-8). They are of the type `misc`, which every style knows. */
export function bibtex(items: readonly CslItem[]): string {
  return `${items.map(entry).join("\n\n")}\n`;
}
