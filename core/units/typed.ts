/** What reading a person's typing gives: the value, or what was got and what was wanted. Never an exception. */
export type Typed<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly got: string; readonly wanted: string };

export function accepted<T>(value: T): Typed<T> {
  return { ok: true, value };
}

/** The refusal of `text`; `wanted` names what would have been read, with an example. At most 60 characters are quoted. */
export function refused(text: string, wanted: string): Typed<never> {
  return { ok: false, got: text.length > 60 ? `${text.slice(0, 57)}...` : text, wanted };
}

/** The sentence shown beside the field. */
export function typedErrorText(error: { readonly got: string; readonly wanted: string }): string {
  return `Got ${error.got === "" ? "nothing" : `"${error.got}"`}, wanted ${error.wanted}`;
}
