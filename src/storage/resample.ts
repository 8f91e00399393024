import libsamplerate from "@alexanderolsen/libsamplerate-js";

type Converter = Awaited<ReturnType<typeof libsamplerate.create>>;

/** Above this the library works in pieces and drops the last samples; below, one call gives all of them. */
const mostSamplesAtOnce = 1_000_000;
/** Silence put behind a long recording, so that the samples the library holds back are ours and not the recording's. */
const paddingSec = 0.05;

const converters = new Map<string, Promise<Converter>>();

/**
 * `samples` at `toHz`: `round(samples.length * toHz / fromHz)` of them, without delay, by the fast sinc converter of
 * libsamplerate (aliases 97 dB down by its makers' figures). The same array when the rates are equal.
 */
export async function resampleTo(
  samples: Float32Array,
  fromHz: number,
  toHz = 16_000,
): Promise<Float32Array> {
  if (fromHz === toHz || samples.length === 0) return samples;
  const length = Math.max(1, Math.round((samples.length * toHz) / fromHz));
  if (samples.length <= mostSamplesAtOnce) {
    const converter = await converterFor(fromHz, toHz);
    return fitLength(converter.simple(samples), length);
  }
  const padded = new Float32Array(samples.length + Math.ceil(paddingSec * fromHz));
  padded.set(samples);
  const converter = await create(fromHz, toHz);
  try {
    return fitLength(converter.full(padded), length);
  } finally {
    converter.destroy();
  }
}

function converterFor(fromHz: number, toHz: number): Promise<Converter> {
  const key = `${fromHz}>${toHz}`;
  const known = converters.get(key) ?? create(fromHz, toHz);
  converters.set(key, known);
  return known;
}

function create(fromHz: number, toHz: number): Promise<Converter> {
  return libsamplerate.create(1, fromHz, toHz, {
    converterType: libsamplerate.ConverterType.SRC_SINC_FASTEST,
  });
}

/** The library may give a sample more or less than asked for; what is missing is silence. */
function fitLength(samples: Float32Array, length: number): Float32Array {
  if (samples.length === length) return samples.slice();
  const fitted = new Float32Array(length);
  fitted.set(samples.subarray(0, length));
  return fitted;
}
