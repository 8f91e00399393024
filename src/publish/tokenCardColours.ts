/** The pages' colours (reports/style/colours.css) by what they are for, in light and dark. */
const colours = {
  sheet: ["#fffefb", "#202329"],
  ink: ["#24272d", "#e9e6df"],
  soft: ["#5a5f68", "#aeb1b6"],
  rule: ["#d9d4c8", "#3d4149"],
  first: ["#315a8c", "#8db4e6"],
  second: ["#b4531f", "#f0a26b"],
} as const;

export type CardScheme = "auto" | "light" | "dark";

/** Rules of the card's classes; `auto` follows the reader's setting, the others are for pictures that cannot. */
export function tokenCardColours(scheme: CardScheme): string {
  if (scheme !== "auto") return rules(scheme === "light" ? 0 : 1);
  return `${rules(0)}@media (prefers-color-scheme: dark){${rules(1)}}`;
}

function rules(column: 0 | 1): string {
  const of = (name: keyof typeof colours) => colours[name][column];
  return [
    `.sheet,.paper{fill:${of("sheet")}}`,
    `.ink{fill:${of("ink")}}`,
    ".strong{font-weight:600}",
    `.soft,.consonant{fill:${of("soft")}}`,
    `.chip{fill:${of("sheet")};fill-opacity:0.72;stroke:${of("rule")}}`,
    `.voiced{fill:${of("first")};stroke:${of("first")}}`,
    `.devoiced{stroke:${of("ink")}}`,
    `.unknown{fill:${of("sheet")};stroke:${of("soft")}}`,
    `.hatch{stroke:${of("ink")}}`,
    `.ribbon{fill:${of("first")};fill-opacity:0.85;stroke:${of("sheet")}}`,
    `.own{fill:none;stroke:${of("second")}}`,
    `.mark{fill:${of("second")}}`,
    `.bracket{stroke:${of("second")}}`,
    `.scale{stroke:${of("soft")}}`,
  ].join("");
}
