import { interfaceText } from "../interface/interfaceText.ts";

/** Headings and labels inside the templates of the pages of single tokens, by the name the template calls them. */
export function pageHeadings(): Record<string, string> {
  const { devoicing, timing, vowelSpace, colouring, whatMatters } = interfaceText();
  return {
    "devoicing-compare": devoicing.compare.heading,
    "devoicing-compare-lead": devoicing.compare.lead,
    "devoicing-compare-form": devoicing.compare.form,
    "devoicing-sweep": devoicing.sweep.heading,
    "timing-choices": timing.choices,
    "timing-growth": timing.growth.heading,
    "timing-twins": timing.twins.heading,
    "timing-rhythm": timing.rhythm.heading,
    "vowel-space-choices": vowelSpace.choices,
    "vowel-space-chart": vowelSpace.chart.heading,
    "vowel-space-shift": vowelSpace.shift.heading,
    "vowel-space-sources": vowelSpace.sources.heading,
    "colouring-choices": colouring.choices,
    "what-matters-choices": whatMatters.choices,
  };
}
