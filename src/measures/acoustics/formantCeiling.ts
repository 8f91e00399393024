/**
 * Frequency below which five resonances are looked for, Hz, by the speaker's median F0: 5000 below 150 Hz, 5500 below
 * 250 Hz or when unknown, 6200 above (children). A longer vocal tract goes with a lower voice; 5000 for men and 5500 for
 * women are common practice, no published source.
 */
export function formantCeiling(f0MedianHz: number): number {
  if (f0MedianHz < 150) return 5000;
  return f0MedianHz > 250 ? 6200 : 5500;
}
