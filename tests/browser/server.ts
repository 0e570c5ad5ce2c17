import { type ChildProcess, spawn } from "node:child_process";
import { join } from "node:path";

/** The local page's own server, as `npm start` runs it. */
export interface PageServer {
  address: string;
  stop(): void;
}

export function startServer(): Promise<PageServer> {
  const script = join(__dirname, "..", "..", "tools", "start.mjs");
  const child: ChildProcess = spawn(process.execPath, [script, "--no-build", "--port", "0"]);
  return new Promise((resolve, reject) => {
    let printed = "";
    const read = (chunk: Buffer) => {
      printed += chunk.toString();
      const address = /http:\/\/localhost:\d+\//.exec(printed)?.[0];
      if (address) resolve({ address, stop: () => void child.kill() });
    };
    child.stdout!.on("data", read);
    child.stderr!.on("data", read);
    child.on("exit", (code) => reject(new Error(`The server ended with ${code}: ${printed}`)));
  });
}
