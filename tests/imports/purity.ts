import ts from "typescript";

/**
 * What a source text of the library must not do: use chance or the clock, or keep state at module level that a run could
 * change. Lines "line: what".
 */
export function impurities(text: string): string[] {
  const file = ts.createSourceFile("module.ts", text, ts.ScriptTarget.ES2022, true);
  const found: string[] = [];
  const note = (node: ts.Node, what: string) => {
    found.push(`${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}: ${what}`);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node)) {
      const name = node.getText();
      if (["Math.random", "Date.now"].includes(name)) note(node, name);
    }
    if (ts.isIdentifier(node) && node.text === "Intl") note(node, "Intl");
    if (ts.isNewExpression(node) && node.expression.getText() === "Date" && !node.arguments?.length) {
      note(node, "new Date()");
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  for (const statement of file.statements) {
    if (!ts.isVariableStatement(statement)) continue;
    if (!(statement.declarationList.flags & ts.NodeFlags.Const)) note(statement, "module-level variable");
    for (const { initializer } of statement.declarationList.declarations) {
      if (initializer !== undefined && isEmptyStore(initializer)) note(initializer, "module-level store");
    }
  }
  return found;
}

/** A module-level container made empty can only be there to be filled later. */
function isEmptyStore(value: ts.Expression): boolean {
  if (ts.isArrayLiteralExpression(value)) return value.elements.length === 0;
  if (!ts.isNewExpression(value) || value.arguments?.length) return false;
  return ["Map", "Set", "WeakMap", "WeakSet"].includes(value.expression.getText());
}
