// Lets plain node require the TypeScript of this repository: node -r ./tools/typescript.cjs file.ts
const { transformFileSync } = require("@swc/core");

require.extensions[".ts"] = (module, file) => {
  const { code } = transformFileSync(file, {
    module: { type: "commonjs" },
    sourceMaps: "inline",
  });
  module._compile(code, file);
};
