/**
 * How an item, an operation or a rule is matched with what the user wrote: case, spaces and punctuation aside; a slash,
 * a point and a number sign count, so that `1/2` and `#12` stay what they are. Letters are those of any script.
 *
 * @example lookUpKey("EMT 1/2  Set-Screw coupling") //=> "emt 1/2 set screw coupling"
 */
export const lookUpKey = (text: unknown): string =>
  String(text ?? "")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}/.#]+/gu, " ")
    .trim();
