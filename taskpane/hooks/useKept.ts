import { createContext, useCallback, useContext, useState, type Dispatch, type SetStateAction } from "react";

const KeptContext = createContext(new Map<string, unknown>());

/** State that outlives its view: what a person typed is still there when they come back to it. */
export function useKept<T>(key: string, initial: T): [T, Dispatch<SetStateAction<T>>] {
  const kept = useContext(KeptContext);
  const [value, setValue] = useState<T>(() => (kept.has(key) ? (kept.get(key) as T) : initial));
  const set = useCallback(
    (next: SetStateAction<T>) =>
      setValue((before) => {
        const after = typeof next === "function" ? (next as (before: T) => T)(before) : next;
        kept.set(key, after);
        return after;
      }),
    [kept, key],
  );
  return [value, set];
}

export const KeptProvider = KeptContext.Provider;
