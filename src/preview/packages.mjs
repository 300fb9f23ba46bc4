/**
 * The sheet engine's ES modules can't be imported by Node as they are (one of their dependencies is CommonJS under an ES
 * import). Unbundled code in Node, as in tests, uses its CommonJS build instead.
 */
export const sheetEngineAlias = (root) => [
  { find: /^@univerjs\/([a-z-]+)$/, replacement: `${root}/node_modules/@univerjs/$1/lib/cjs/index.js` },
];
