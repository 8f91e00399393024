/** Controls of every page. */
export const choices = {
  /** Below the controls, for a value in the address that is none of the options; what counts instead stands in `instead`. */
  unknown: (label: string, value: string, instead: string) =>
    `${label}: “${value}” is not known here; ${instead} is shown.`,
};
