/** Which templates a template calls. */
import type { ProgramNode, StatementNode } from './syntax';

/** Names of the templates that a template calls as they stand in it, each as often as it does. */
export function calledIn(program: ProgramNode | undefined): readonly string[] {
  return (program?.body ?? []).flatMap(calledBy);
}

function calledBy(node: StatementNode): readonly string[] {
  if (node.type === 'BlockStatement') return [...calledIn(node.program), ...calledIn(node.inverse)];
  if (node.type !== 'PartialStatement' || node.name.type !== 'PathExpression') return [];
  return [node.name.original];
}
