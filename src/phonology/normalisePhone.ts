export { type NormalisedPhone, normalisePhone } from "./phones.ts";
