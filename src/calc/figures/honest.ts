/** A figure made from an estimate is an estimate, whoever worked it out. */
import { quantity } from '../../quantity/quantity';
import type { Figure } from '../figure';

/** The figure as it stands, or marked as an estimate if something in it is one. */
export function honest(figure: Figure): Figure {
  const { value, doubt, inputs } = figure;
  const guessed = inputs.some((input) => typeof input.value === 'object' && input.value.estimated);
  if (!guessed || doubt.basis === 'estimated' || doubt.basis === 'unknown') return figure;
  return {
    ...figure,
    value:
      value.kind === 'quantity'
        ? { ...value, quantity: quantity(value.quantity.dimension, value.quantity.si, true) }
        : value,
    doubt: { ...doubt, basis: 'estimated' },
  };
}
