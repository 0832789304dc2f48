// MiniZinc's WebAssembly build (the npm package `minizinc`) on the command line: node minizinc_wasm.cjs DIST ARGUMENTS...
// DIST is the package's folder dist/. Its worker takes and posts messages; here both ends are this process. Files go in by their base names.
const fs = require('fs');
const path = require('path');
const [dist, ...given] = process.argv.slice(2);

const files = {};
const args = given.map((word) => {
  if (!/\.(mzn|dzn)$/.test(word)) return word;
  files[path.basename(word)] = fs.readFileSync(word, 'utf8');
  return path.basename(word);
});

let receive;
let ready;
globalThis.require = require;
globalThis.__filename = __filename;
globalThis.__dirname = __dirname;
globalThis.addEventListener = (kind, handler) => { receive = handler; };
globalThis.postMessage = (message) => {
  if (message.type === 'ready') return ready();
  if (message.type !== 'exit') return process.stdout.write(message.value ?? '');
  fs.writeSync(1, message.stdout ?? '');
  fs.writeSync(2, message.stderr ?? message.message ?? '');
  process.exit(message.code);
};
(0, eval)(fs.readFileSync(path.join(dist, 'minizinc-worker.js'), 'utf8'));

(async () => {
  const started = new Promise((resolve) => { ready = resolve; });
  receive({ data: { wasmURL: path.join(dist, 'minizinc.wasm'), dataURL: path.join(dist, 'minizinc.data') } });
  await started;
  receive({ data: { files, args } });
})();
