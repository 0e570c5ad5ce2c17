import { createRuntime, type FunctionSet, type FunctionsMetadata } from "../engine";

/** Loads the functions bundle that Excel loads, from beside the page. */
export async function loadFunctions(): Promise<FunctionSet> {
  const { CustomFunctions, implementations } = createRuntime();
  Object.assign(globalThis, { CustomFunctions });
  const metadata = fetch("../functions.json").then((answer) => {
    if (!answer.ok) throw new Error(`functions.json: ${answer.status} ${answer.statusText}`);
    return answer.json() as Promise<FunctionsMetadata>;
  });
  await addScript("../functions.js");
  return { namespace: "CONDUIT", metadata: await metadata, implementations };
}

function addScript(source: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = source;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${source} did not load.`));
    document.head.append(script);
  });
}
