import ts from "typescript";

/** One `@example` line of a doc comment: an expression and, after `//`, what it gives. */
export interface Example {
  readonly file: string;
  readonly line: number;
  readonly expression: string;
  /** Undefined where the line prints none. */
  readonly value: string | undefined;
}

/** The example lines of one source text. Each stands on the line of its tag. */
export function examplesIn(file: string, text: string): Example[] {
  return text.split("\n").flatMap((row, index) => {
    const found = /^\s*(?:\/\*)?\*.*?@example\s+(.*?)\s*(?:\*\/)?$/.exec(row)?.[1];
    if (found === undefined) return [];
    const at = found.indexOf(" // ");
    const expression = at < 0 ? found : found.slice(0, at);
    return [{ file, line: index + 1, expression, value: at < 0 ? undefined : found.slice(at + 4).trim() }];
  });
}

/** Names that an expression takes from outside itself. Undefined where it is not one expression. */
export function namesUsed(expression: string): ReadonlySet<string> | undefined {
  const parsed = parsedExpression(expression);
  if (parsed === undefined) return undefined;
  const used = new Set<string>();
  const own = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isParameter(node) && ts.isIdentifier(node.name)) own.add(node.name.text);
    if (ts.isIdentifier(node) && !isLabel(node)) used.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(parsed);
  for (const name of own) used.delete(name);
  return used;
}

/** The `b` of `a.b` and of `{ b: 1 }` name nothing outside. */
function isLabel(node: ts.Identifier): boolean {
  const { parent } = node;
  return (
    (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
    (ts.isPropertyAssignment(parent) && parent.name === node)
  );
}

export function parsedExpression(text: string): ts.Expression | undefined {
  const { statements } = ts.createSourceFile("example.ts", `(${text});`, ts.ScriptTarget.ES2022, true);
  const [only] = statements;
  if (statements.length !== 1 || only === undefined || !ts.isExpressionStatement(only)) return undefined;
  const inner = ts.isParenthesizedExpression(only.expression) ? only.expression.expression : undefined;
  return inner?.end === text.length + 1 ? inner : undefined;
}

/** Names of the exported functions of a source text whose doc comment has no example. */
export function functionsWithoutExample(text: string): string[] {
  const { statements } = ts.createSourceFile("module.ts", text, ts.ScriptTarget.ES2022, true);
  return statements
    .filter(ts.isFunctionDeclaration)
    .filter((f) => f.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword))
    .filter((f) => !ts.getJSDocTags(f).some(({ tagName }) => tagName.text === "example"))
    .flatMap(({ name }) => (name === undefined ? [] : [name.text]));
}
