/** The functions templates may call, beside those that every template has. What they give is text, never markup. */
import type { Helpers } from '../markup/template/helpers';

/** `{{capital text}}`: the text with a capital letter in front; `{{sentence text}}`: and a full stop behind. */
export const templateHelpers: Helpers = {
  capital: ([text]) => withCapital(text),
  sentence: ([text]) => {
    const capital = withCapital(text);
    return /[.!?]$/.test(capital) || capital === '' ? capital : `${capital}.`;
  },
};

function withCapital(text: unknown): string {
  if (typeof text !== 'string') throw new Error('it needs a text');
  return text.charAt(0).toUpperCase() + text.slice(1);
}
