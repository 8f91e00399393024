export function cardNeedsOneDataset(datasets: number): string {
  return `--card describes one dataset, but ${datasets} were given. Run them one by one, or put each dataset.json into its folder.`;
}

export function epochInvalid(text: string): string {
  return `SOURCE_DATE_EPOCH is "${text}", which is no number of seconds since 1970. Set it right, or unset it: results then carry the time of the run.`;
}
