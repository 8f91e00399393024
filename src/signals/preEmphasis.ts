/**
 * y[i] = x[i] − coefficient·x[i−1], with x[−1] taken as x[0]; lifts high frequencies by up to 6 dB an octave.
 * Common coefficient .97 (ETSI ES 201 108, from memory). Returns a new array; the input stays as it is.
 */
export function preEmphasise(samples: Float32Array, coefficient = 0.97): Float32Array {
  const out = new Float32Array(samples.length);
  let previous = samples.length > 0 ? samples[0]! : 0;
  for (let i = 0; i < samples.length; i++) {
    const sample = samples[i]!;
    out[i] = sample - coefficient * previous;
    previous = sample;
  }
  return out;
}
