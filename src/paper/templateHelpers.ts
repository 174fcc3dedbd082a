/** The functions templates may call, beside those that every template has. What they give is text, never markup. */
import type { Helpers } from '../markup/template/helpers';

/** `{{sentence text}}`: the text with a capital letter in front and a full stop behind. */
export const templateHelpers: Helpers = {
  sentence: ([text]) => {
    if (typeof text !== 'string') throw new Error('it needs a text');
    const capital = text.charAt(0).toUpperCase() + text.slice(1);
    return /[.!?]$/.test(capital) || capital === '' ? capital : `${capital}.`;
  },
};
