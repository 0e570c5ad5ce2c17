// A webpack loader for the engine's packages: a private field is set by plain assignment. They come with each field set
// through a function that looks the name up, and the engine makes some hundred thousand objects in a calculation.
const field = /^(\s*)_defineProperty\(this, "(_\w+)", (.+)\);$/gm;

module.exports = function plainFields(source) {
  const accessors = new Set([...source.matchAll(/^\s*(?:get|set) (_\w+)\(/gm)].map(([, name]) => name));
  return source.replace(field, (call, indent, name, value) =>
    accessors.has(name) ? call : `${indent}this.${name} = ${value};`,
  );
};
