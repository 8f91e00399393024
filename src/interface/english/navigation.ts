/** The bar that leads from page to page. */
export const navigation = {
  label: "Pages",
  skip: "Skip to the content",
  /** Heads the folded list on narrow screens; the page the reader is on follows. */
  all: "Pages",
  groups: {
    start: "Overview",
    sounds: "What the recordings show",
    lessons: "For lessons",
    sources: "Behind the numbers",
    own: "Added pages",
  },
};
