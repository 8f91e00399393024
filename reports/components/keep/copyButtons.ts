import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";
import { copyText } from "./copyText.ts";

/** Gives every citation that stands in the page a button to copy it; without it the text can be marked and copied. */
export function copyButtons(): HTMLElement {
  const status = element("p", { class: "kept", role: "status" });
  const { cite, figure } = interfaceText();
  for (const place of document.querySelectorAll<HTMLElement>(".citation")) {
    const text = place.querySelector("pre")?.textContent ?? "";
    const name = place.querySelector(".citation-form")?.textContent ?? "";
    const click = async () => {
      place.append(status);
      status.textContent = (await copyText(text)) ? figure.copied : figure.notCopied;
    };
    place.append(
      element(
        "button",
        { type: "button", class: "tool", "aria-label": `${cite.copy}: ${name}`, click },
        cite.copy,
      ),
    );
  }
  return element("div", { hidden: true });
}
