/**
 * Texts for people as they stand in the source of `sim`, found by the TypeScript compiler: what is given as a part of a
 * problem, as a note, as a tube's name or as the message of an error, through variables, choices and helpers. Each hole becomes `{}`.
 */
import { join } from 'node:path';
import ts from 'typescript';

/** Properties that hold a part of a problem. */
const parts = new Set(['expected', 'got', 'fix', 'complaint']);
const errors = /^(RangeError|IntegrationError)$/;
const houseForm = /^(.+?) - expected (.+?) - got (.+?) - (.+)$/s;
/** The same in source, for people: what ends in "report this" is for whoever mends the program. */
const houseText = / - expected .*(?<!report this)`$/s;
const hole = '{}';
/** Choices inside one text that are worth writing out. */
const mostForms = 12;

/**
 * @param {string} root
 * @returns {string[]} sorted, each once
 */
export function templatesIn(root) {
  const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile);
  const { options } = ts.convertCompilerOptionsFromJson(config.compilerOptions, root);
  const files = ts.sys.readDirectory(join(root, 'sim'), ['.ts']);
  const program = ts.createProgram(files, options);
  const sources = program.getSourceFiles().filter(({ fileName }) => files.includes(fileName));
  return new Finder(program.getTypeChecker(), sources).all();
}

class Finder {
  /** @type {Set<string>} */
  #found = new Set();
  /** Calls by what they call. @type {Map<ts.Node, (ts.CallExpression | ts.NewExpression)[]>} */
  #calls = new Map();
  /** Expressions and parameters that have been looked at. @type {Set<ts.Node>} */
  #seen = new Set();
  #checker;
  #sources;

  /**
   * @param {ts.TypeChecker} checker
   * @param {ts.SourceFile[]} sources
   */
  constructor(checker, sources) {
    this.#checker = checker;
    this.#sources = sources;
  }

  /** @returns {string[]} */
  all() {
    const nodes = this.#sources.flatMap(nodesIn);
    for (const node of nodes) {
      if (!ts.isCallExpression(node) && !ts.isNewExpression(node)) continue;
      const called = this.#checker.getResolvedSignature(node)?.declaration;
      if (called) this.#calls.set(called, [...(this.#calls.get(called) ?? []), node]);
    }
    for (const node of nodes) for (const text of textsAt(node)) this.#take(text);
    return [...this.#found].sort();
  }

  /** A text that a person may read. @param {ts.Expression} expression */
  #take(expression) {
    if (this.#seen.has(expression)) return;
    this.#seen.add(expression);
    for (const form of this.#formsOf(expression)) {
      const house = houseForm.exec(form);
      if (house?.[4] === 'report this' || form.endsWith(' - ')) continue;
      for (const text of house?.slice(1) ?? form.split('\n')) this.#add(text);
    }
  }

  /** @param {string} text */
  #add(text) {
    const own = text.replaceAll(hole, '');
    // A path, a unit of one letter and signs around a hole are the same in every language.
    if (/\p{L}{2}|\ba\b/u.test(own) && !/^[\w[\]]+\.[\w.[\]{}]*$/.test(text))
      this.#found.add(text.replace(/(\{\})+/g, hole));
  }

  /** What an expression may say; a hole where that is not known here. @param {ts.Expression} node @returns {string[]} */
  #formsOf(node) {
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return [node.text];
    if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node) || ts.isNonNullExpression(node))
      return this.#formsOf(node.expression);
    if (ts.isConditionalExpression(node))
      return [...this.#formsOf(node.whenTrue), ...this.#formsOf(node.whenFalse)];
    if (ts.isBinaryExpression(node)) {
      const { kind } = node.operatorToken;
      const [left, right] = [this.#formsOf(node.left), this.#formsOf(node.right)];
      if (kind === ts.SyntaxKind.PlusToken && this.#isText(node))
        return left.flatMap((a) => right.map((b) => a + b));
      const either = kind === ts.SyntaxKind.QuestionQuestionToken || kind === ts.SyntaxKind.BarBarToken;
      return either ? [...left, ...right] : [hole];
    }
    if (ts.isTemplateExpression(node)) return this.#formsOfTemplate(node);
    if (ts.isIdentifier(node)) return this.#formsOfName(node);
    if (ts.isCallExpression(node)) return this.#formsOfCall(node);
    if (ts.isElementAccessExpression(node))
      return this.#formsOfTable(node.expression) ?? this.#formsOfType(node);
    return this.#formsOfType(node);
  }

  /** Short choices are written out; what else may stand in a hole is a text of its own. @param {ts.TemplateExpression} node */
  #formsOfTemplate(node) {
    let forms = [node.head.text];
    for (const { expression, literal } of node.templateSpans) {
      const inside = this.#formsOf(expression);
      const quoted = /"$/.test(forms[0]) && literal.text.startsWith('"');
      const few = forms.length * inside.length <= mostForms;
      if (!few && !quoted) for (const form of inside) this.#add(form);
      const spoken = few ? inside : [hole];
      forms = forms.flatMap((before) => spoken.map((form) => before + form + literal.text));
    }
    return forms;
  }

  /** @param {ts.Identifier} node @returns {string[]} */
  #formsOfName(node) {
    const declared = this.#declaredBy(node);
    if (declared && ts.isParameter(declared)) {
      this.#takeArguments(declared);
      return this.#formsOfType(node);
    }
    if (
      declared &&
      ts.isVariableDeclaration(declared) &&
      declared.initializer &&
      ts.isIdentifier(declared.name)
    )
      return isConst(declared) ? this.#formsOf(declared.initializer) : this.#formsOfType(node);
    return this.#formsOfType(node);
  }

  /** What a parameter is given, wherever its function is called. @param {ts.ParameterDeclaration} parameter */
  #takeArguments(parameter) {
    if (this.#seen.has(parameter)) return;
    this.#seen.add(parameter);
    const at = parameter.parent.parameters.indexOf(parameter);
    for (const call of this.#calls.get(parameter.parent) ?? []) {
      const given = call.arguments?.[at];
      if (given) this.#take(given);
    }
  }

  /** What a helper gives back; the items of a list that is joined; the values of a table. @param {ts.CallExpression} node @returns {string[]} */
  #formsOfCall(node) {
    const called = this.#checker.getResolvedSignature(node)?.declaration;
    if (called && this.#sources.includes(called.getSourceFile())) {
      if (this.#seen.has(called)) return [hole];
      this.#seen.add(called);
      for (const text of returnedBy(called)) this.#take(text);
      return [hole];
    }
    if (!ts.isPropertyAccessExpression(node.expression)) return [hole];
    const { name, expression: of } = node.expression;
    if (name.text === 'get') for (const value of this.#valuesOf(of)) this.#take(value);
    if (name.text === 'join' || name.text === 'slice') this.#formsOf(of);
    if (name.text === 'map' && node.arguments[0] && ts.isFunctionLike(node.arguments[0]))
      for (const text of returnedBy(node.arguments[0])) this.#take(text);
    return [hole];
  }

  /** The values of a table written out as a Map. @param {ts.Expression} table @returns {ts.Expression[]} */
  #valuesOf(table) {
    const declared = ts.isIdentifier(table) ? this.#declaredBy(table) : null;
    const made = declared && ts.isVariableDeclaration(declared) ? declared.initializer : null;
    const list = made && ts.isNewExpression(made) ? made.arguments?.[0] : null;
    if (!list || !ts.isArrayLiteralExpression(list)) return [];
    return list.elements.flatMap((pair) => (ts.isArrayLiteralExpression(pair) ? [pair.elements[1]] : []));
  }

  /** @param {ts.Expression} node */
  #isText(node) {
    return (this.#checker.getTypeAtLocation(node).flags & ts.TypeFlags.StringLike) !== 0;
  }

  /** The texts of a table or list written out. @param {ts.Expression} table @returns {string[] | null} */
  #formsOfTable(table) {
    const declared = ts.isIdentifier(table) ? this.#declaredBy(table) : null;
    let made = declared && ts.isVariableDeclaration(declared) ? declared.initializer : null;
    while (made && (ts.isAsExpression(made) || ts.isSatisfiesExpression(made))) made = made.expression;
    const texts =
      made && ts.isArrayLiteralExpression(made)
        ? made.elements
        : made && ts.isObjectLiteralExpression(made)
          ? made.properties.flatMap((each) => (ts.isPropertyAssignment(each) ? [each.initializer] : []))
          : [];
    const forms = texts.map((text) => (ts.isStringLiteral(text) ? text.text : hole));
    return forms.length === 0 || forms.includes(hole) ? null : forms;
  }

  /** One of several words, where the type names them. @param {ts.Expression} node @returns {string[]} */
  #formsOfType(node) {
    const type = this.#checker.getTypeAtLocation(node);
    const kinds = type.isUnion() ? type.types : [type];
    const words = kinds.flatMap((kind) => (kind.isStringLiteral() ? [kind.value] : []));
    if (words.length < kinds.length || words.length === 0) return [hole];
    if (words.length === 1) return words;
    for (const word of words) this.#add(word);
    return [hole];
  }

  /** @param {ts.Identifier} node */
  #declaredBy(node) {
    const named = ts.isShorthandPropertyAssignment(node.parent)
      ? this.#checker.getShorthandAssignmentValueSymbol(node.parent)
      : this.#checker.getSymbolAtLocation(node);
    const symbol =
      named && named.flags & ts.SymbolFlags.Alias ? this.#checker.getAliasedSymbol(named) : named;
    return symbol?.valueDeclaration;
  }
}

/** What a node has for people, if it is the place for it. @param {ts.Node} node @returns {ts.Expression[]} */
function textsAt(node) {
  if (ts.isShorthandPropertyAssignment(node)) return parts.has(node.name.text) ? [node.name] : [];
  if (ts.isPropertyAssignment(node)) return parts.has(node.name.getText()) ? [node.initializer] : [];
  if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.EqualsToken) {
    const { left, right } = node;
    return ts.isPropertyAccessExpression(left) && parts.has(left.name.text) ? [right] : [];
  }
  if (ts.isNewExpression(node) && errors.test(node.expression.getText())) return [...(node.arguments ?? [])];
  // A line in the house's form, wherever it is put together.
  if (ts.isTemplateExpression(node) && !ts.isBinaryExpression(node.parent))
    return houseText.test(node.getText()) ? [node] : [];
  if (!ts.isCallExpression(node)) return [];
  const called = node.expression.getText();
  if (/(^|\.)notes\.push$/.test(called)) return [...node.arguments];
  if (called === 'ownTube') return [node.arguments[0]];
  return /(^|\.)desk\.note$/.test(called) ? node.arguments.slice(1) : [];
}

/** @param {ts.Node} called @returns {ts.Expression[]} */
function returnedBy(called) {
  const { body } = /** @type {ts.FunctionLikeDeclaration} */ (called);
  if (!body) return [];
  if (!ts.isBlock(body)) return [body];
  /** @type {ts.Expression[]} */
  const found = [];
  const walk = (/** @type {ts.Node} */ node) => {
    if (ts.isReturnStatement(node) && node.expression) found.push(node.expression);
    if (!ts.isFunctionLike(node)) ts.forEachChild(node, walk);
  };
  ts.forEachChild(body, walk);
  return found;
}

/** @param {ts.VariableDeclaration} declared */
function isConst(declared) {
  return (ts.getCombinedNodeFlags(declared) & ts.NodeFlags.Const) !== 0;
}

/** @param {ts.Node} node @returns {ts.Node[]} */
function nodesIn(node) {
  /** @type {ts.Node[]} */
  const all = [];
  const walk = (/** @type {ts.Node} */ each) => {
    all.push(each);
    ts.forEachChild(each, walk);
  };
  walk(node);
  return all;
}
