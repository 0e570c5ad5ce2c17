/** Which end of the conduit lies on the hook's side of the shoe, in words. */
export const HOOK_WORDS = { datum: "hook toward datum end", far: "hook toward far end" } as const;
