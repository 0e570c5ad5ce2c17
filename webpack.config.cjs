// Five bundles from one config:
//   functions   dist/functions.js + functions.json   what Excel and the local page both load
//   taskpane    dist/taskpane.html                    the pane (only once taskpane/index.tsx exists)
//   workbench   dist/workbench/                       the local spreadsheet page
//   bender      dist/bender/                          the page for a tablet at the bender
//   tools       dist/tools/                           the command line and the engine, for Node
const fs = require("node:fs");
const path = require("node:path");
const CopyPlugin = require("copy-webpack-plugin");
const CustomFunctionsMetadataPlugin = require("custom-functions-metadata-plugin");
const HtmlPlugin = require("html-webpack-plugin");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const { demoJson } = require("./tools/demoJson.cjs");
const MinimizerPlugin = require("minimizer-webpack-plugin");

const root = __dirname;
const dist = path.join(root, "dist");
const from = (...parts) => path.join(root, ...parts);

/** Files of functions/ that define worksheet functions, in a stable order. */
function functionFiles() {
  const folder = from("functions");
  return fs
    .readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => path.join(folder, name))
    .filter((file) => /@customfunction\b/i.test(fs.readFileSync(file, "utf8")))
    .sort();
}

const typescript = {
  test: /\.tsx?$/,
  exclude: /node_modules/,
  // Its settings, and those of the tests and tools, are in .swcrc.
  use: "swc-loader",
};

const styles = { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] };

/** For the big bundles: the usual minimizer takes minutes where this one takes seconds. */
const quickMinimizer = {
  minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.swcMinify, extractComments: false })],
};

function base(name, mode) {
  return {
    name,
    mode,
    context: root,
    devtool: mode === "production" ? false : "source-map",
    resolve: { extensions: [".ts", ".tsx", ".js"] },
    module: { rules: [typescript, styles] },
    output: { path: dist, filename: "[name].js" },
    performance: { hints: false },
    stats: "errors-warnings",
    cache: { type: "filesystem", name: `${name}-${mode}`, cacheDirectory: from(".cache", "webpack") },
  };
}

/** Lists that Excel offers while an argument is typed, into the metadata that the plugin before it made. */
const choicesInMetadata = {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("ChoicesInMetadata", (compilation) => {
      const stage = compiler.webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT;
      compilation.hooks.processAssets.tap({ name: "ChoicesInMetadata", stage }, () => {
        require("./tools/typescript.cjs");
        const { withChoices } = require("./tools/choices/choices.ts");
        compilation.updateAsset("functions.json", (source) => {
          return new compiler.webpack.sources.RawSource(withChoices(String(source.source())));
        });
      });
    });
  },
};

/** The metadata is read anew on every build, so this bundle is not cached. */
function functions(mode) {
  const files = functionFiles();
  if (files.length === 0) throw new Error("functions/ holds no file with @customfunction.");
  return {
    ...base("functions", mode),
    cache: false,
    target: ["web", "es2020"],
    entry: { functions: files },
    // It writes allowCustomDataForDataTypeAny: cards, and error cells that cost their row only. Never beside it
    // allowErrorForDataTypeAny: Excel 2021 with a volume license is reported to crash on both (docs/excel.md).
    plugins: [new CustomFunctionsMetadataPlugin({ output: "functions.json", input: files }), choicesInMetadata],
  };
}

const otherApps = "access|onenote|outlook|powerpoint|project|visio|word";
const notForExcel = ["**/*.debug.js", "**/*.d.ts", "**/*.map", `**/@(${otherApps})-*.js`];

/** In Excel the pane and the worksheet functions share one page, so the pane's page loads the functions too. */
const functionsInPane = {
  apply(compiler) {
    compiler.hooks.compilation.tap("FunctionsInPane", (compilation) => {
      HtmlPlugin.getHooks(compilation).alterAssetTags.tap("FunctionsInPane", (data) => {
        const attributes = { defer: true, src: "functions.js" };
        data.assetTags.scripts.unshift({ tagName: "script", voidTag: false, attributes, meta: {} });
        return data;
      });
    });
  },
};

function taskpane(mode) {
  // `minimized` tells the optimizer that office.js is minified already; without it the build takes minutes.
  const officeJs = { from: from("node_modules/@microsoft/office-js/dist"), to: "office-js", info: { minimized: true } };
  return {
    ...base("taskpane", mode),
    target: ["web", "es2020"],
    optimization: quickMinimizer,
    entry: { taskpane: from("taskpane", "index.tsx") },
    plugins: [
      new MiniCssExtractPlugin(),
      new HtmlPlugin({ template: from("taskpane", "taskpane.html"), filename: "taskpane.html" }),
      new CopyPlugin({
        patterns: [
          { ...officeJs, globOptions: { ignore: notForExcel } },
          { from: from("taskpane", "icons"), to: "icons" },
          { from: from("taskpane", "shortcuts.json"), to: "shortcuts.json" },
          { from: from("workbench", "demo", "ferryTerminal.ts"), to: "demo.json", transform: demoJson },
          { from: from("docs", "samples", "upper-deck.dxf"), to: "samples/upper-deck.dxf" },
        ],
      }),
      functionsInPane,
    ],
  };
}

/** A quarter megabyte of the grid's packages that this page has no use for, and small parts in their place. */
const lighter = {
  "cjk-regex$": from("workbench", "page", "lighter", "cjkRegex.ts"),
  "franc-min$": from("workbench", "page", "lighter", "franc.ts"),
  "opentype.js$": from("workbench", "page", "lighter", "opentype.ts"),
};

const withoutTextMark = {
  test: /@univerjs[\\/]sheets-ui[\\/]lib[\\/]es[\\/]index\.js$/,
  use: from("tools", "withoutTextMark.cjs"),
};

const plainFields = {
  test: /@univerjs[\\/](core|engine-formula)[\\/]lib[\\/]es[\\/]index\.js$/,
  use: from("tools", "plainFields.cjs"),
};

function workbench(mode) {
  return {
    ...base("workbench", mode),
    target: ["web", "es2020"],
    optimization: {
      ...quickMinimizer,
      // The grid's packages in a file of their own: it is minified once and then comes from the cache.
      splitChunks: {
        cacheGroups: { grid: { test: /node_modules/, name: "grid", chunks: ({ name }) => name === "workbench" } },
      },
    },
    resolve: { ...base("workbench", mode).resolve, alias: lighter },
    module: { rules: [typescript, styles, withoutTextMark, plainFields] },
    entry: { workbench: from("workbench", "page", "index.ts"), worker: from("workbench", "page", "worker.ts") },
    output: { path: path.join(dist, "workbench"), filename: "[name].js", publicPath: "" },
    plugins: [
      new MiniCssExtractPlugin(),
      new HtmlPlugin({
        template: from("workbench", "page", "index.html"),
        filename: "index.html",
        excludeChunks: ["worker"],
      }),
    ],
  };
}

/** A page of its own, small enough to be kept by a tablet. */
function bender(mode) {
  return {
    ...base("bender", mode),
    target: ["web", "es2020"],
    optimization: quickMinimizer,
    entry: {
      bender: from("workbench", "bender", "index.tsx"),
      sw: from("workbench", "bender", "serviceWorker.ts"),
    },
    output: { path: path.join(dist, "bender"), filename: "[name].js", publicPath: "" },
    plugins: [
      new MiniCssExtractPlugin(),
      new HtmlPlugin({
        template: from("workbench", "bender", "index.html"),
        filename: "index.html",
        chunks: ["bender"],
      }),
    ],
  };
}

/** Packages stay outside the command-line bundle: Node loads them itself. */
function tools(mode) {
  return {
    ...base("tools", mode),
    target: "node20",
    entry: {
      evaluate: from("workbench", "commandLine", "evaluate.ts"),
      engine: from("workbench", "commandLine", "engine.ts"),
      workbook: from("workbench", "workbook", "command.ts"),
      samples: from("workbench", "samples", "command.ts"),
      shapes: from("workbench", "shapes", "command.ts"),
      portfolio: from("workbench", "portfolio", "command.ts"),
      portfolioThread: from("workbench", "portfolio", "thread.ts"),
    },
    output: { path: path.join(dist, "tools"), filename: "[name].cjs", library: { type: "commonjs2" } },
    externalsType: "commonjs",
    externals: [({ request }, done) => (/^@univerjs\/|^rxjs/.test(request ?? "") ? done(null, request) : done())],
    optimization: { minimize: false },
  };
}

module.exports = (_env, { mode = "production" } = {}) => {
  const configs = [functions(mode), tools(mode)];
  if (fs.existsSync(from("taskpane", "index.tsx"))) configs.push(taskpane(mode));
  if (fs.existsSync(from("workbench", "page", "index.ts"))) configs.push(workbench(mode), bender(mode));
  return configs;
};
