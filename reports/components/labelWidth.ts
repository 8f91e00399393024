let measure: ((text: string) => number) | null = null;

/** Width of the widest of some texts in px, as the pictures set them: 14 px of the font for IPA and Japanese. */
export function labelWidth(texts: readonly string[]): number {
  measure ??= measurer();
  return Math.ceil(Math.max(0, ...texts.map(measure)));
}

function measurer(): (text: string) => number {
  const context = document.createElement("canvas").getContext("2d");
  if (context === null) return (text) => 14 * text.length;
  const style = getComputedStyle(document.documentElement);
  const families = ["--ipa", "--japanese"].map((name) => style.getPropertyValue(name));
  context.font = `14px ${families.join(", ")}`;
  return (text) => context.measureText(text).width;
}
