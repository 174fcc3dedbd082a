/** How long a burner runs on all the fuel of its charged tank, and how often the tank is pumped up on the way. */
import type { Car, PartId } from '../../car/car';
import { tanksFeeding } from '../../car/flow';
import { type Quantity, quantity } from '../../quantity/quantity';
import { type ChargedTank, deliveredDownToM3 } from '../air/cushion';
import type { Figure, FigureInput } from '../figure';

/** From full to the reserve. */
export interface TankEndurance {
  readonly seconds: number;
  /** How often it is pumped up to its top again before the reserve is reached. */
  readonly pumpings: number;
}

/** Never more than this many; a band of no width would be pumped for ever. */
const mostPumpings = 1000;

/**
 * Draw fuel until the floor is reached, pump up, and so on down to what is kept. The emptier the tank the more air it
 * has, and the longer each charge lasts.
 */
export function enduranceOf(
  full: ChargedTank,
  use: { readonly floorGaugePa: number; readonly keptM3: number; readonly rateM3PerS: number },
): TankEndurance {
  const seconds = drawnInSeconds(full.fuelM3, use.keptM3, use.rateM3PerS);
  let [fuelM3, pumpings] = [full.fuelM3, 0];
  while (pumpings < mostPumpings) {
    fuelM3 -= deliveredDownToM3({ ...full, fuelM3 }, use.floorGaugePa);
    if (fuelM3 <= use.keptM3) break;
    pumpings += 1;
  }
  return { seconds, pumpings };
}

/**
 * How long a pilot burns at full fire on what may be drawn of a tank that is filled as the spec says; nothing for a tank that feeds
 * a main burner too, one that a pump refills, or a pilot whose rate is not written down.
 */
export function pilotLasts(car: Car, tankId: PartId): Quantity<'time'> | undefined {
  const tank = car.spec.tanks[tankId];
  const fed = Object.entries(car.spec.burners).filter(([id]) => tanksFeeding(car, id).includes(tankId));
  const [only, further] = fed.filter(([, { job, fuel }]) => job === 'pilot' || fuel === tank?.holds);
  const rate = only?.[1]['full-rate'];
  if (tank === undefined || only?.[1].job !== 'pilot' || further !== undefined || rate === undefined)
    return undefined;
  if (tanksFeeding(car, tankId).some((id) => id !== tankId)) return undefined;
  const filledM3 = Math.min((tank['fill-to'] ?? tank.capacity).si, tank.capacity.si);
  return quantity('time', drawnInSeconds(filledM3, keptBackM3(tank), rate.si), rate.estimated);
}

/** What of a tank is not counted on: what cannot be drawn, and the reserve, m³. */
export function keptBackM3(tank: Car['spec']['tanks'][string]): number {
  return (tank.unusable?.si ?? 0) + (tank.reserve?.si ?? 0);
}

function drawnInSeconds(fuelM3: number, keptM3: number, rateM3PerS: number): number {
  return Math.max(0, fuelM3 - keptM3) / rateM3PerS;
}

/** Both as figures. */
export function enduranceFigures(
  names: {
    readonly tankId: PartId;
    readonly tank: string;
    readonly burnerId: PartId;
    readonly burner: string;
    readonly job: Car['spec']['burners'][string]['job'];
  },
  fire: 'full' | 'low',
  endurance: TankEndurance,
  inputs: readonly FigureInput[],
  tank: Car['spec']['tanks'][string],
): readonly Figure[] {
  const { tankId, burnerId, burner, job } = names;
  const kept = [
    { name: 'cannot be drawn', value: tank.unusable ?? 'taken as nothing', from: `tanks.${tankId}.unusable` },
    { name: 'reserve', value: tank.reserve ?? 'none said', from: `tanks.${tankId}.reserve` },
  ];
  const guessed = inputs.some(({ value }) => typeof value === 'object' && value.estimated);
  const common = {
    inputs: [...inputs, ...kept],
    source: 'Boyle’s law with absolute pressures',
    checkedAgainst: `worked by hand${job === 'pilot' ? '; trade: about 1 US gal serves a pilot for a whole day (common practice, no source)' : ''}`,
    doubt: {
      basis: guessed ? ('estimated' as const) : ('computed' as const),
      words: 'other burners on the same tank, leaks and draughts make it less',
    },
  };
  return [
    {
      id: `endurance-${tankId}-${burnerId}-${fire}`,
      name: `the ${burner} burns at ${fire} fire on a full ${names.tank}, pumped up as needed`,
      value: {
        kind: 'quantity',
        quantity: quantity('time', endurance.seconds, guessed),
        rounding: 'down',
      },
      formula: '(filled to − cannot be drawn − reserve) / rate',
      ...common,
    },
    {
      id: `pumpings-${tankId}-${burnerId}-${fire}`,
      name: `times the ${names.tank} is pumped up in that time`,
      value: { kind: 'number', number: endurance.pumpings, rounding: 'up' },
      formula: 'how often the pressure falls from top to floor before the reserve is reached',
      ...common,
    },
  ];
}
