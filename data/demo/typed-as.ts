import ts from "typescript";

const HERE = new URL(".", import.meta.url);

/** Read once: the sources and the standard library are the same for every comparison. */
const read = new Map<string, ts.SourceFile | undefined>();

/**
 * Compares JSON with a TypeScript type as the compiler would a literal in source: unknown keys, wrong words and wrong
 * kinds of value are all faults.
 *
 * @param json text of a JSON file
 * @param type a type of the module, "Job"
 * @param module what it is imported from, as seen from this folder
 * @returns the compiler's messages; empty when the JSON is of that type
 */
export function typeFaults(json: string, type: string, module: string): string[] {
  const file = new URL("typed-literal.ts", HERE).pathname;
  const source = `import type { ${type} } from ${JSON.stringify(module)};\nexport const value: ${type} = ${json};\n`;
  const options: ts.CompilerOptions = {
    strict: true,
    exactOptionalPropertyTypes: true,
    noEmit: true,
    skipLibCheck: true,
    types: [],
    target: ts.ScriptTarget.ES2023,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    customConditions: ["@landfast/source"],
  };
  const host = ts.createCompilerHost(options);
  const onDisk = host.getSourceFile.bind(host);
  host.getSourceFile = (name, ...rest) => {
    if (name === file) return ts.createSourceFile(name, source, ts.ScriptTarget.ES2023);
    if (!read.has(name)) read.set(name, onDisk(name, ...rest));
    return read.get(name);
  };
  const exists = host.fileExists.bind(host);
  host.fileExists = (name) => name === file || exists(name);
  const program = ts.createProgram([file], options, host);
  const literal = program.getSourceFile(file);
  return ts
    .getPreEmitDiagnostics(program, literal)
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, "\n"));
}
