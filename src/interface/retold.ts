import { interfaceText } from "./interfaceText.ts";

/**
 * A sentence of the results in the language of the page. Results keep warnings, methods and reasons in English, as the
 * terminal prints them; what a language cannot tell stays as it is.
 */
export function retold(sentence: string): string {
  const { retell } = interfaceText();
  const whole = retell(sentence);
  if (whole !== null) return whole;
  const [end] = /[.。]$/.exec(sentence) ?? [];
  if (end === undefined) return sentence;
  const bare = retell(sentence.slice(0, -1));
  return bare === null ? sentence : `${bare}。`;
}
