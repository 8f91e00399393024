import { element } from "../element.ts";
import { inlineStyle, usedIds } from "./inlineStyle.ts";
import { wrapText } from "./wrapText.ts";

const namespace = "http://www.w3.org/2000/svg";
const margin = 16;
/** A finding longer than this is set as running text. */
const longestHeading = 140;

/** The words in a saved picture: what it shows above it, where it comes from below. */
export interface Caption {
  readonly finding: string;
  /** How the numbers came about, for those who cannot see the picture. */
  readonly description: string;
  readonly source: string;
}

export interface SavedPicture {
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

function svgElement(
  tag: string,
  attributes: Readonly<Record<string, string | number>>,
  text = "",
): SVGElement {
  const made = document.createElementNS(namespace, tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, String(value));
  made.textContent = text;
  return made;
}

interface Part {
  readonly drawn: SVGElement;
  readonly box: DOMRect;
}

/** The drawings in a picture, with every style written into them, and where each stands. */
function partsOf(place: Element): Part[] {
  const drawings = [...place.querySelectorAll<SVGSVGElement | HTMLCanvasElement>("svg, canvas")];
  return drawings
    .filter((drawing) => drawing.parentElement?.closest("svg") == null)
    .map((drawing) => ({ drawing, box: drawing.getBoundingClientRect() }))
    .filter(({ box }) => box.width > 1 && box.height > 1)
    .map(({ drawing, box }) => {
      if (drawing instanceof HTMLCanvasElement)
        return {
          drawn: svgElement("image", { href: drawing.toDataURL(), width: box.width, height: box.height }),
          box,
        };
      const drawn = drawing.cloneNode(true) as SVGSVGElement;
      const needed = [...usedIds(drawing)].filter(
        (id) => drawing.querySelector(`#${CSS.escape(id)}`) === null,
      );
      inlineStyle(drawing, drawn);
      for (const id of needed) {
        const shared = document.getElementById(id);
        if (shared === null) continue;
        const copy = shared.cloneNode(true) as Element;
        inlineStyle(shared, copy);
        drawn.prepend(copy);
      }
      const { viewBox } = drawing;
      if (viewBox.baseVal === null || viewBox.baseVal.width === 0)
        drawn.setAttribute("viewBox", `0 0 ${box.width} ${box.height}`);
      drawn.setAttribute("width", String(box.width));
      drawn.setAttribute("height", String(box.height));
      return { drawn, box };
    });
}

/** A copy of the picture beside it, out of sight, in the colours of paper. */
function onPaper(picture: Element, drawing: Element | null): HTMLElement {
  const copy = (drawing ?? picture).cloneNode(true) as Element;
  if (drawing === null) {
    const canvases = picture.querySelectorAll("canvas");
    for (const [i, canvas] of [...copy.querySelectorAll("canvas")].entries())
      canvas.getContext("2d")?.drawImage(canvases[i]!, 0, 0);
  }
  const { width } = picture.getBoundingClientRect();
  return element("div", { class: "on-paper", "aria-hidden": "true", style: `width:${width}px` }, copy);
}

/**
 * A picture as an SVG file that needs nothing else: styles written in, light background, title and description, the
 * finding above it and its source below. `drawing` stands in for a picture that is no drawing itself (a table).
 * Null where there is nothing to draw.
 */
export function standaloneSvg(
  picture: Element,
  caption: Caption,
  drawing: Element | null = null,
): SavedPicture | null {
  const place = onPaper(picture, drawing);
  picture.after(place);
  const parts = partsOf(place);
  const { sans, serif, ink, soft, sheet } = lettering(place);
  place.remove();
  if (parts.length === 0) return null;
  const left = Math.min(...parts.map(({ box }) => box.left));
  const top = Math.min(...parts.map(({ box }) => box.top));
  const innerPx = Math.max(...parts.map(({ box }) => box.right)) - left;
  const widthPx = Math.ceil(innerPx) + 2 * margin;
  const long = caption.finding.length > longestHeading;
  const [size, family, weight, step] = long
    ? ([13, sans, 400, 18] as const)
    : ([17, serif, 600, 23] as const);
  const heading = wrapText(caption.finding, `${weight} ${size}px ${family}`, innerPx);
  const source = wrapText(caption.source, `11px ${sans}`, innerPx);
  const pictureTop = margin + heading.length * step + 8;
  const pictureBottom = pictureTop + Math.max(...parts.map(({ box }) => box.bottom)) - top;
  const heightPx = Math.ceil(pictureBottom + 14 + source.length * 15 + margin);
  const root = svgElement("svg", {
    xmlns: namespace,
    width: widthPx,
    height: heightPx,
    viewBox: `0 0 ${widthPx} ${heightPx}`,
    role: "img",
  });
  const line = (size: number, family: string, fill: string, weight: number) => (text: string, y: number) =>
    svgElement(
      "text",
      { x: margin, y, fill, "font-family": family, "font-size": size, "font-weight": weight },
      text,
    );
  const headingLine = line(size, family, ink, weight);
  const sourceLine = line(11, sans, soft, 400);
  root.append(
    svgElement("title", {}, caption.finding),
    svgElement("desc", {}, `${caption.description} ${caption.source}`.trim()),
    svgElement("rect", { width: widthPx, height: heightPx, fill: sheet }),
    ...heading.map((text, i) => headingLine(text, margin + size - 1 + i * step)),
  );
  for (const { drawn, box } of parts) {
    drawn.setAttribute("x", String(margin + box.left - left));
    drawn.setAttribute("y", String(pictureTop + box.top - top));
    drawn.setAttribute("overflow", "visible");
    root.append(drawn);
  }
  root.append(...source.map((text, i) => sourceLine(text, pictureBottom + 25 + i * 15)));
  return { svg: new XMLSerializer().serializeToString(root), widthPx, heightPx };
}

function lettering(place: Element) {
  const style = getComputedStyle(place);
  const value = (name: string) => style.getPropertyValue(name).trim().replaceAll("\n", " ");
  return {
    sans: `${value("--sans")}, ${value("--japanese")}`,
    serif: value("--serif"),
    ink: value("--ink"),
    soft: value("--soft"),
    sheet: value("--sheet"),
  };
}
