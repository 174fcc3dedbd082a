/** What is said of charged tanks where something was not measured. */
import type { Car, PartId } from '../../car/car';
import { type Figure, notKnownFigure } from '../figure';

/** Where the figures of charged tanks come from. */
export const boyle = 'Boyle’s law with absolute pressures; air of sea level (US Standard Atmosphere 1976)';

/** Burners fed from the tank whose rate nobody has measured; a low fire is asked for of a main burner alone. */
export function ratesNotKnown(
  car: Car,
  tank: { readonly id: PartId; readonly name: string },
  fed: readonly { readonly burner: PartId; readonly full?: number; readonly low?: number }[],
): readonly Figure[] {
  return fed.flatMap(({ burner, full, low }) => {
    const fires = [
      ...(full === undefined ? (['full'] as const) : []),
      ...(low === undefined && car.spec.burners[burner]?.job === 'main' ? (['low'] as const) : []),
    ];
    return fires.map((fire) =>
      notKnownFigure(
        {
          id: `charge-lasts-${tank.id}-${burner}-${fire}`,
          name: `one charge of the ${tank.name} lasts the ${car.parts.get(burner)?.name ?? burner} at ${fire} fire`,
          formula: 'fuel pressed out between top and floor / rate; pumps standing still',
          source: boyle,
        },
        fire === 'full'
          ? `the fuel it burns at full fire (\`burners.${burner}.full-rate\`)`
          : `the fuel it burns at its lowest steady fire, if it has one (\`burners.${burner}.low-rate\`)`,
      ),
    );
  });
}

/** Strokes of an air pump that the spec does not tell. */
export function strokesNotKnown(tank: { readonly id: PartId; readonly name: string }): Figure {
  return notKnownFigure(
    {
      id: `strokes-${tank.id}`,
      name: `strokes of the air pump of the ${tank.name} from floor to top`,
      formula: 'air × (top − floor) / (air pressure × stroke × share delivered)',
      source: boyle,
    },
    `which pump charges it (\`charges: ${tank.id}\`) and what one stroke of it takes in (\`stroke-volume\`)`,
  );
}

/** Tanks that a pump charges with air while nothing says how far. */
export function bandsNotKnown(car: Car): readonly Figure[] {
  const charged = new Set(Object.values(car.spec.pumps).flatMap(({ charges }) => charges ?? []));
  return Object.entries(car.spec.tanks).flatMap(([id, { name, pressure }]) =>
    pressure !== undefined || !charged.has(id)
      ? []
      : [
          notKnownFigure(
            {
              id: `delivered-${id}`,
              name: `fuel the ${name} presses out between top and floor, filled as said`,
              formula: 'air × (absolute top / absolute floor − 1), at most the fuel',
              source: boyle,
            },
            `the highest and the lowest pressure it is used at (\`tanks.${id}.pressure\`)`,
          ),
        ],
  );
}
