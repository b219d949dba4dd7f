/**
 * Texts written into components instead of content/words.yaml: literal children, literal texts of attributes that people read or
 * hear, literal assignments to the DOM's text. Read from the syntax tree (the parser that the build uses), so that a comment, a
 * class name or the key of a word is not taken for one.
 */
import { parseSync } from 'vite';

export interface LiteralText {
  readonly line: number;
  readonly text: string;
}

const READ_ATTRIBUTES: ReadonlySet<string> = new Set([
  'alt',
  'aria-description',
  'aria-label',
  'aria-placeholder',
  'aria-roledescription',
  'aria-valuetext',
  'label',
  'placeholder',
  'title',
]);
const READ_PROPERTIES: ReadonlySet<string> = new Set([
  'alt',
  'ariaLabel',
  'innerText',
  'placeholder',
  'textContent',
  'title',
]);

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}
const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';

const children = (node: Node): Node[] =>
  Object.values(node).flatMap((value) => (Array.isArray(value) ? value.filter(isNode) : isNode(value) ? [value] : []));

/** Symbols of units are the same in every language. */
const UNIT_SYMBOL = /^(mm|cm|kg|s|N|MPa)$/;
const isLanguage = (text: string): boolean => /\p{L}/u.test(text) && !UNIT_SYMBOL.test(text.trim());

interface Found {
  readonly at: number;
  readonly text: string;
}

/** Texts that an expression can be: literals, both arms of a choice, parts of a template. What a call returns is not literal. */
const textsOf = (value: unknown): Found[] => {
  if (!isNode(value)) return [];
  const part = (key: string): Found[] => textsOf(value[key]);
  switch (value.type) {
    case 'Literal':
      return typeof value.value === 'string' ? [{ at: value.start, text: value.value }] : [];
    case 'JSXText':
      return [
        { at: value.start + (/^\s*/.exec(String(value.value))?.[0].length ?? 0), text: String(value.value).trim() },
      ];
    case 'TemplateLiteral':
      return [
        ...(Array.isArray(value.quasis) ? value.quasis : []).filter(isNode).map((quasi) => ({
          at: quasi.start,
          text: String((quasi.value as { cooked?: string }).cooked ?? ''),
        })),
        ...(Array.isArray(value.expressions) ? value.expressions : []).flatMap(textsOf),
      ];
    case 'ConditionalExpression':
      return [...part('consequent'), ...part('alternate')];
    case 'LogicalExpression':
    case 'BinaryExpression':
      return value.type === 'LogicalExpression' || value.operator === '+' ? [...part('left'), ...part('right')] : [];
    case 'JSXExpressionContainer':
    case 'ParenthesizedExpression':
    case 'TSAsExpression':
      return part('expression');
    default:
      return [];
  }
};

const nameOf = (value: unknown): string => {
  if (!isNode(value)) return '';
  if (value.type === 'JSXNamespacedName') return `${nameOf(value.namespace)}:${nameOf(value.name)}`;
  return typeof value.name === 'string' ? value.name : '';
};

const here = (node: Node): Found[] => {
  if (node.type === 'JSXElement' || node.type === 'JSXFragment')
    return (Array.isArray(node.children) ? node.children : []).flatMap(textsOf);
  if (node.type === 'JSXAttribute') return READ_ATTRIBUTES.has(nameOf(node.name)) ? textsOf(node.value) : [];
  if (node.type === 'AssignmentExpression' && isNode(node.left) && node.left.type === 'MemberExpression')
    return READ_PROPERTIES.has(nameOf(node.left.property)) ? textsOf(node.right) : [];
  return [];
};

const walk = (node: Node): Found[] => [...here(node), ...children(node).flatMap(walk)];

/** Throws when the file does not parse: a file that can't be read must not pass. */
export const literalTexts = (file: string, code: string): LiteralText[] => {
  const { program, errors } = parseSync(file, code);
  const [error] = errors;
  if (error !== undefined) throw new SyntaxError(`${file}: ${error.message}`);
  return walk(program as unknown as Node)
    .filter(({ text }) => isLanguage(text))
    .map(({ at, text }) => ({ line: code.slice(0, at).split('\n').length, text }));
};
