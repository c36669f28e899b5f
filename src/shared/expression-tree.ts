/**
 * The tree of an expression, by the parser of mathjs. It is given four kinds of node alone: numbers,
 * names, operators and brackets. For a function, an assignment, a matrix, a string, a property or
 * whatever else its language knows it finds nothing to make it of, and so none can come out.
 */
// By name: the rest of the package stays out of the page.
import { createParse } from 'mathjs/number';

import { Refused } from './refused.ts';

class TreeNode {
  // The parser asks the class whether it is one of its nodes.
  declare readonly isNode: true;
  static {
    Object.defineProperty(TreeNode.prototype, 'isNode', { value: true });
  }
}

class WrittenNumber {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

export class ConstantNode extends TreeNode {
  readonly isConstantNode = true;
  /** As it was written: the parser reads no value. */
  readonly text: string;
  /** Texts in quotes and words like `true` come here too, but not as numbers. */
  constructor(value: unknown) {
    super();
    if (!(value instanceof WrittenNumber)) throw new Refused();
    this.text = value.text;
  }
}

export class SymbolNode extends TreeNode {
  readonly isSymbolNode = true;
  readonly name: string;
  constructor(name: string) {
    super();
    this.name = name;
  }
}

export class ParenthesisNode extends TreeNode {
  readonly isParenthesisNode = true;
  readonly content: TreeNode;
  constructor(content: TreeNode) {
    super();
    this.content = content;
  }
}

const operators = [
  'add',
  'subtract',
  'multiply',
  'divide',
  'pow',
  'unaryMinus',
  'unaryPlus',
] as const;
type Operator = (typeof operators)[number];

export class OperatorNode extends TreeNode {
  readonly isOperatorNode = true;
  readonly op: string;
  readonly fn: Operator;
  readonly args: readonly TreeNode[];
  /** A product without a sign, as between a number and its unit. */
  readonly implicit: boolean;
  constructor(op: string, fn: string, args: readonly TreeNode[], implicit = false) {
    super();
    const known = operators.find((one) => one === fn);
    if (known === undefined) throw new Refused();
    this.op = op;
    this.fn = known;
    this.args = args;
    this.implicit = implicit;
  }
}

export type { TreeNode };

class OtherNode extends TreeNode {
  constructor() {
    super();
    throw new Refused();
  }
}

type Parse = (text: string) => TreeNode;
type Signatures = Readonly<Record<string, Parse>>;

// Of the ways to call it, this is the one from text alone; nothing is turned into text for it.
const typed = Object.assign((_name: string, ways: Signatures) => ways.string, {
  addConversion: () => {},
});

const parse = createParse({
  typed,
  numeric: (text: string) => new WrittenNumber(text),
  config: { number: 'number' },
  ConstantNode,
  SymbolNode,
  ParenthesisNode,
  OperatorNode,
  AccessorNode: OtherNode,
  ArrayNode: OtherNode,
  AssignmentNode: OtherNode,
  BlockNode: OtherNode,
  ConditionalNode: OtherNode,
  FunctionAssignmentNode: OtherNode,
  FunctionNode: OtherNode,
  IndexNode: OtherNode,
  ObjectNode: OtherNode,
  RangeNode: OtherNode,
  RelationalNode: OtherNode,
});

/** Null where the text is no whole expression. */
export function treeOf(text: string): TreeNode | null {
  try {
    return parse(text);
  } catch {
    return null;
  }
}
