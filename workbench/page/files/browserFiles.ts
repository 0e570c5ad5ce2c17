/** Hands the browser a file to save. */
export function download(name: string, content: BlobPart, type: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = fileName(name);
  link.click();
  // Not at once: some browsers fetch it only after the click is through.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** A name that every file system takes. */
export const fileName = (name: string): string => name.replace(/[\\/:*?"<>|\p{Cc}]+/gu, " ").trim();

/** Lets a person choose a file; null when they do not. */
export function pickFile(accept: string): Promise<File | null> {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = accept;
  return new Promise((resolve) => {
    input.addEventListener("change", () => resolve(input.files?.[0] ?? null));
    input.addEventListener("cancel", () => resolve(null));
    input.click();
  });
}
