/** The values that prose can use: those of steps, every part by its duty, and the figures that visitors ask for. */
import type { CarFigures } from '../../calc/figures/carFigures';
import type { RangeChart } from '../../calc/figures/rangeChart';
import type { Car } from '../../car/car';
import { listed, partName } from '../../language/language';
import type { Values } from '../../language/wording';
import { carValues } from '../../procedure/carValues';
import { duties } from '../../procedure/duties';
import { quantity } from '../../quantity/quantity';
import { wholeSteps } from '../../quantity/rounding';
import type { Phrases } from '../phrase';
import type { GuideStyle } from './guide';

/**
 * `the.<duty>` is the parts with that duty with article and tag, `name.<duty>` their names alone; both are absent if the
 * car has none. `figure.<name>` is absent if it is not known.
 */
export function guideValues(car: Car, figures: CarFigures, { print, phrases, language }: GuideStyle): Values {
  const found = Object.entries(duties).map(([duty, { parts }]) => {
    const names = [...new Set(parts(car))].flatMap((id) => {
      const part = car.parts.get(id);
      return part === undefined ? [] : [part];
    });
    return { duty, names };
  });
  const joined = (say: (part: { name: string; tag?: string }) => string) =>
    Object.fromEntries(
      found.map(({ duty, names }) => [
        duty,
        names.length === 0 ? undefined : listed(language, names.map(say)),
      ]),
    );
  return {
    ...carValues(car, print, language),
    the: joined((part) => partName(language, part)),
    name: joined(({ name }) => name),
    figure: figureValues(car, figures, phrases),
  };
}

function figureValues(car: Car, figures: CarFigures, phrases: Phrases): Values {
  const { spec } = car;
  const cold = figures.raising.curves.find(({ start }) => start === 'cold');
  const move = cold?.checks.find(({ at }) => at === 'least-to-move')?.seconds;
  const light = figures.startUp.parts.find(({ id }) => id === 'light');
  const planned = (seconds: number | undefined) =>
    seconds === undefined ? undefined : phrases.duration(quantity('time', seconds), 'up');
  const working = figures.steam.find(({ at }) => at === 'working');
  const main = Object.values(spec.burners).find(({ job }) => job === 'main');
  const mainFuel = main === undefined ? undefined : (spec.fuels[main.fuel]?.name ?? main.fuel);
  const known = (value: Parameters<Phrases['first']>[0], options?: Parameters<Phrases['first']>[1]) =>
    value === undefined ? undefined : phrases.first(value, options);
  return {
    'usual-speed': known(spec.running['usual-speed']),
    'most-speed': known(spec.running['most-speed']),
    mass: known(spec.running['mass-empty']),
    // good time, as the run sheet plans: visitors look at both
    'steam-time':
      move === undefined
        ? undefined
        : known(quantity('time', wholeSteps(move * (1 + figures.raising.doubt), 60, 'up') * 60, true), {
            rounding: 'up',
            decimals: 0,
          }),
    'light-to-move': planned(light?.goodS),
    'light-to-move-least': planned(light?.leastS),
    'start-up': light === undefined ? undefined : planned(figures.startUp.goodS),
    'steam-temperature': known(working?.temperature),
    'burner-rate': known(main?.['full-rate']),
    'main-fuel': mainFuel,
    // nobody says the shares of a blend aloud
    'main-fuel-said': mainFuel?.split(',')[0],
    'water-range': known(fullRange(figures.water)),
    'fuel-range': known(fullRange(figures.fuel)),
    'blow-down-feed':
      figures.blowDownInterval.value.kind === 'quantity'
        ? known(figures.blowDownInterval.value.quantity, { rounding: 'down' })
        : undefined,
    'blow-down-amount': known(spec.boiler['blow-down-amount'], { rounding: 'down' }),
    'burning-on-water': known(quantityOf(figures, 'burning-on-water'), { rounding: 'up' }),
    'oil-use': known(spec.engine.oil.use, { rounding: 'up' }),
    'oil-distance': known(quantityOf(figures, 'oil-distance'), { rounding: 'down' }),
    'glass-over-safe': known(glassOverSafe(spec.boiler.heights), { rounding: 'down' }),
    'boiler-water': known(spec.boiler['water-at-working-level']),
    'cut-off-temperature': known(
      Object.values(spec.devices).find(({ kind }) => kind === 'temperature-cut-off')?.['set-temperature'],
      { rounding: 'down' },
    ),
    year: String(spec.car.year),
  };
}

/** A figure that is one amount and is known. */
function quantityOf({ all }: CarFigures, id: string) {
  const value = all.find((figure) => figure.id === id)?.value;
  return value?.kind === 'quantity' ? value.quantity : undefined;
}

function fullRange(chart: RangeChart | undefined) {
  const distanceM = chart?.full.rangeM.level;
  return distanceM === undefined ? undefined : quantity('distance', distanceM, true);
}

/** How far the lowest water that is seen in the glass stands above the lowest safe level. */
function glassOverSafe(heights: Car['spec']['boiler']['heights']) {
  if (heights?.glass === undefined) return undefined;
  return quantity('length', heights.glass.bottom.si - heights['least-safe'].si);
}
