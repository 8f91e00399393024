export function cardNeedsOneDataset(datasets: number): string {
  return `--card describes one dataset, but ${datasets} were given. Run them one by one, or put each dataset.json into its folder.`;
}
