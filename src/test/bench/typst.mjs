// Usage: node typst.mjs INPUT.typ OUTPUT.pdf FONTS, with the npm package @myriaddreamin/typst-ts-node-compiler
import { writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { createRequire } from 'node:module';

const { NodeCompiler } = createRequire(resolve('package.json'))('@myriaddreamin/typst-ts-node-compiler');
const [input, output, fonts] = process.argv.slice(2).map((path) => resolve(path));
const compiler = NodeCompiler.create({ workspace: dirname(input), fontArgs: [{ fontPaths: [fonts] }] });
writeFileSync(output, compiler.pdf({ mainFilePath: input }));
