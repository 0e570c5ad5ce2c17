/** A name for a layer, a group or a file: letters, digits, dots and dashes; anything else becomes a line below. */
export function plainName(text: string): string {
  return (
    text
      .trim()
      .replace(/[^\p{L}\p{N}.-]+/gu, "_")
      .replace(/^\.+/, "_") || "_"
  );
}

/** Makes names that differ even where letter case does not count: a second "TH-01" becomes "TH-01_2". */
export function differentNames(): (text: string) => string {
  const taken = new Set<string>();
  return (text) => {
    const plain = plainName(text);
    let name = plain;
    for (let number = 2; taken.has(name.toLowerCase()); number += 1) name = `${plain}_${number}`;
    taken.add(name.toLowerCase());
    return name;
  };
}
