import ts from 'typescript';

/** A figure that only `Figures` has as a name of its own: an object meant to be some is known by it. */
const OWN_NAME = 'probably';
const HOLDERS = new Set(['figures', 'thresholds']);

const propertiesOf = (type: ts.Type): string[] =>
  type.isUnion() ? type.types.flatMap(propertiesOf) : type.getProperties().map(({ name }) => name);

/** What a node gives as figures: an object written where some are asked for, or the value of a holder. */
const figuresAt = (node: ts.Node, checker: ts.TypeChecker): string[] => {
  if (ts.isObjectLiteralExpression(node)) {
    const asked = checker.getContextualType(node)?.getNonNullableType();
    const isFigures = asked !== undefined && checker.getPropertyOfType(asked, OWN_NAME);
    return isFigures ? propertiesOf(checker.getTypeAtLocation(node)) : [];
  }
  const isHolder =
    (ts.isPropertyAssignment(node) || ts.isShorthandPropertyAssignment(node)) &&
    HOLDERS.has(node.name.getText());
  if (!isHolder) return [];
  const value = ts.isPropertyAssignment(node) ? node.initializer : node.name;
  return propertiesOf(checker.getTypeAtLocation(value));
};

/** The names of all figures and thresholds that the detectors can give, by what their code is typed as. */
export const emittedFigures = (): Set<string> => {
  const { fileNames, options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile('core/tsconfig.json', (path) => ts.sys.readFile(path)).config,
    ts.sys,
    'core',
  );
  const isRead = (path: string) => path.includes('/findings/') || path.endsWith('.d.ts');
  const program = ts.createProgram(fileNames.filter(isRead), options);
  const checker = program.getTypeChecker();
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    for (const name of figuresAt(node, checker)) names.add(name);
    ts.forEachChild(node, visit);
  };
  for (const file of program.getSourceFiles()) {
    if (file.fileName.includes('core/findings/')) visit(file);
  }
  return names;
};
