/**
 * Where a spec lies far outside what such cars do. Worth reading, never an error: a car may be odd and right.
 *
 * Every bound here is common practice, no source.
 */
import type { Car } from '../../car/car';
import type { DiagnosticCode } from '../../diagnostic/catalogue';
import type { Diagnostic } from '../../diagnostic/diagnostic';
import { mile, psi, usGallon } from '../../quantity/base-units';
import { tankOf } from '../tank/tank';
import { burnsOnRemarks } from './burnsOnRemarks';
import type { CarFigures } from './carFigures';
import { coldLevelRemarks } from './coldLevel';
import { levelRemarks } from './levelRemarks';
import { notKnownRemarks } from './notKnownRemarks';
import { fillingM3 } from './planning';
import { shapeFromSpec } from './tankModel';

/** Everything worth a remark, in the order of the spec. */
export function figureRemarks(car: Car, figures: CarFigures): readonly Diagnostic[] {
  return [
    ...tankRemarks(car),
    ...bandRemarks(car),
    ...levelRemarks(car),
    ...coldLevelRemarks(car),
    ...soakRemarks(car),
    ...burnsOnRemarks(car),
    ...cutOutRemarks(car),
    ...blendRemarks(car, figures),
    ...draughtRemarks(car, figures),
    ...raisingRemarks(car, figures),
    ...notKnownRemarks(car, figures),
    ...rangeRemarks(car, figures),
    ...balanceRemarks(car, figures),
  ];
}

const inWords = 'Common practice, no source; this car may be otherwise.';

function remark(
  car: Car,
  code: DiagnosticCode,
  path: string,
  told: {
    readonly message: string;
    readonly found: string;
    readonly expected: string;
    readonly mend: string;
  },
): Diagnostic {
  return { code, severity: 'remark', at: car.spotOf(path), ...told, notes: [inWords] };
}

/** Stated and worked-out capacity may differ by baffles and dents, not by more. */
const mostApart = 0.05;

function tankRemarks(car: Car): readonly Diagnostic[] {
  return Object.entries(car.spec.tanks).flatMap(([id, tank]) => {
    const told: Diagnostic[] = [];
    if (tank.shape !== undefined) {
      const { capacityM3 } = tankOf(shapeFromSpec(tank.shape));
      const apart = capacityM3 / tank.capacity.si - 1;
      if (Math.abs(apart) > mostApart)
        told.push({
          ...remark(car, 'figure-tank-capacity', `tanks.${id}.capacity`, {
            message: `the ${tank.name} does not hold what its shape holds`,
            found: `\`${tank.capacity.written}\``,
            expected: `about ${(capacityM3 / usGallon).toFixed(1)} US gal (${(capacityM3 * 1000).toFixed(1)} L), within 5 in 100`,
            mend: 'measure the inside again, or fill it by a measure and write what it took',
          }),
          notes: [
            'The stick chart is worked out from the shape, so that a wrong measure makes every reading wrong.',
          ],
        });
    }
    const readTo = Math.max(...(tank.stick ?? []).map(({ volume }) => volume.si));
    const filledTo = tank['fill-to'] ?? tank.capacity;
    if (tank.stick !== undefined && readTo < filledTo.si * (1 - mostApart))
      told.push({
        ...remark(car, 'figure-stick-short', `tanks.${id}.stick`, {
          message: `the stick readings of the ${tank.name} end below what it is filled to`,
          found: `the highest is \`${tank.stick.find(({ volume }) => volume.si === readTo)?.volume.written ?? ''}\``,
          expected: `one at \`${filledTo.written}\``,
          mend: 'fill it by a measure and write down the reading; after another tank was put in, all of them',
        }),
        notes: ['Readings of an old tank make every reading of the new one wrong.'],
      });
    if (tank.read === 'stick' && tank.shape === undefined && tank.stick === undefined)
      told.push({
        ...remark(car, 'figure-stick-unknown', `tanks.${id}.read`, {
          message: `the ${tank.name} is read with a stick, but nothing says what a depth means`,
          found: '`stick`',
          expected: '`shape` (the inside measures) or `stick` (what is in it at a few depths)',
          mend: 'measure the inside, or fill it by a measure and write down the depths',
        }),
        notes: ['Until then no paper says how much a reading is.'],
      });
    return told;
  });
}

/** Bands such tanks are kept in, Pa: of pilots, and of main fuel that holds kerosene. */
const pilotBand = { fromPa: 10 * psi, toPa: 30 * psi } as const;
const mainBand = { fromPa: 80 * psi, toPa: 160 * psi } as const;

function bandRemarks(car: Car): readonly Diagnostic[] {
  const { spec } = car;
  const burns = (job: 'main' | 'pilot') =>
    new Set(Object.values(spec.burners).flatMap((burner) => (burner.job === job ? [burner.fuel] : [])));
  const [main, pilot] = [burns('main'), burns('pilot')];
  return Object.entries(spec.tanks).flatMap(([id, tank]) => {
    if (tank.pressure === undefined) return [];
    const { from, to } = tank.pressure;
    const heavy = spec.fuels[tank.holds]?.parts.some((part) => part.liquid === 'kerosene') === true;
    if (pilot.has(tank.holds) && !main.has(tank.holds)) {
      if (from.si >= pilotBand.fromPa && to.si <= pilotBand.toPa) return [];
      return [
        remark(car, 'figure-pilot-band', `tanks.${id}.pressure`, {
          message: `the ${tank.name} is charged far outside what pilots run at`,
          found: `\`${from.written}\` to \`${to.written}\``,
          expected: '15 to 20 psi gauge, or near it',
          mend: 'read the gauge again; if it is right, leave it',
        }),
      ];
    }
    if (!main.has(tank.holds) || !heavy || (from.si >= mainBand.fromPa && to.si <= mainBand.toPa)) return [];
    return [
      remark(car, 'figure-fuel-band', `tanks.${id}.pressure`, {
        message: `the ${tank.name} is charged far outside what kerosene burners run at`,
        found: `\`${from.written}\` to \`${to.written}\``,
        expected: 'about 120 psi gauge, and not under about 80',
        mend: 'read the gauge again; if it is right, leave it',
      }),
    ];
  });
}

const shortSoakS = 15 * 60;

/** Gasoline asks for less heat; the rule is one of kerosene. */
function soakRemarks(car: Car): readonly Diagnostic[] {
  const { burners, fuels } = car.spec;
  const heavy = Object.values(burners).some(
    ({ job, fuel }) => job === 'main' && fuels[fuel]?.parts.some(({ liquid }) => liquid === 'kerosene'),
  );
  return Object.entries(burners).flatMap(([id, { name, soak }]) => {
    if (!heavy || soak === undefined || soak.least.si >= shortSoakS) return [];
    return [
      remark(car, 'figure-soak-short', `burners.${id}.soak.least`, {
        message: `the soak of the ${name} is short for a kerosene burner`,
        found: `\`${soak.least.written}\``,
        expected: '15 min at the least; 30 min is better',
        mend: 'lengthen it, unless the vaporizer is known to be hot by then',
      }),
    ];
  });
}

const highCutOutPa = 600 * psi;

function cutOutRemarks(car: Car): readonly Diagnostic[] {
  const { boiler } = car.spec;
  const cutsOut = boiler['burner-cuts-out'];
  if (boiler.kind === 'monotube' || cutsOut.si <= highCutOutPa) return [];
  return [
    remark(car, 'figure-cut-out-high', 'boiler.burner-cuts-out', {
      message: 'the burner cuts out far above what such boilers run at',
      found: `\`${cutsOut.written}\``,
      expected: 'near 550 psi gauge, or less',
      mend: 'read it off the gauge as the automatic shuts, and ask the inspector',
    }),
  ];
}

/** About one part in twenty is usual. */
const mostGasoline = 0.1;

function blendRemarks(car: Car, { blends }: CarFigures): readonly Diagnostic[] {
  return blends.flatMap(({ fuelId, name, blend }) => {
    const share = (key: string): number =>
      blend.filter(({ liquid }) => liquid.key === key).reduce((sum, portion) => sum + portion.share, 0);
    const gasoline = share('gasoline');
    if (share('kerosene') === 0 || gasoline <= mostGasoline) return [];
    return [
      remark(car, 'figure-blend-light', `fuels.${fuelId}.parts`, {
        message: `there is much gasoline in the ${name}`,
        found: `${Math.round(gasoline * 100)} % gasoline`,
        expected: 'about 5 %',
        mend: 'use less, unless the burner is known to want it; handle all of it as gasoline',
      }),
    ];
  });
}

const slowRaisingS = 10 * 60;

function raisingRemarks(car: Car, { raising }: CarFigures): readonly Diagnostic[] {
  const cold = raising.curves.find(({ start }) => start === 'cold');
  const working = cold?.checks.find(({ at }) => at === 'working');
  if (working === undefined) return [];
  if (working.seconds !== undefined && Math.floor(working.seconds / 60) <= slowRaisingS / 60) return [];
  return [
    remark(car, 'figure-steam-slow', 'boiler.steel-mass', {
      message: 'by its fire, water and metal this boiler raises steam slowly',
      found:
        working.seconds === undefined
          ? 'working pressure is not reached'
          : `${Math.ceil(working.seconds / 60)} min from cold to working pressure, as worked out`,
      expected: 'under about 10 min with a good burner',
      mend: 'look at `full-rate`, `efficiency`, `steel-mass` and `water-at-working-level`; time it with a watch',
    }),
  ];
}

/** A full fire that gets less air than this share of it asks for is worth a word. */
const littleAir = 0.9;

function draughtRemarks(car: Car, { raising: { fire } }: CarFigures): readonly Diagnostic[] {
  if (fire === undefined || !fire.known || fire.share >= littleAir) return [];
  return [
    {
      ...remark(car, 'figure-draught-short', 'boiler.draught', {
        message: 'standing still, the fire does not get the air for its full fire',
        found: `air for ${Math.floor(fire.share * 100)} in 100 of it`,
        expected: 'air for all of it, or nearly',
        mend: 'measure `height` and `free-area` again, or write what is seen as `standing`; keep the fire to what burns blue',
      }),
      notes: [
        'A fire short of air burns yellow, makes soot and carbon monoxide, and takes longer to raise steam.',
      ],
    },
  ];
}

/** Miles on 25 US gal that no car without a condenser is believed outside of: the trade’s 25 to 40, with room. */
const believedMiles = { least: 15, most: 50 } as const;

function rangeRemarks(car: Car, { water }: CarFigures): readonly Diagnostic[] {
  const perM = water?.use.byTerrain.level.meanPerM;
  if (water === undefined || perM === undefined || car.spec.engine.exhaust === 'condenser') return [];
  const miles = (25 * usGallon) / perM / mile;
  if (miles >= believedMiles.least && miles <= believedMiles.most) return [];
  const measured = car.spec.running['water-use'] !== undefined || car.spec.running.log !== undefined;
  if (!measured) return [];
  return [
    remark(
      car,
      'figure-range-far',
      car.spec.running['water-use'] === undefined ? 'running.log' : 'running.water-use',
      {
        message: 'the water goes far more or less far than in other cars without a condenser',
        found: `${Math.round(miles)} mi of level road on 25 US gal; ${Math.floor(fillingM3(water) / perM / mile)} mi on this car’s tank`,
        expected: '25 to 40 mi on 25 US gal',
        mend: 'measure again over a marked distance; look for a leaking blow-down, or a unit mixed up',
      },
    ),
  ];
}

/** Share of the fuel’s heat in the steam that no boiler of the kind is believed outside of. */
const believedShare = { least: 0.35, most: 0.9 } as const;

function balanceRemarks(car: Car, { heatFound }: CarFigures): readonly Diagnostic[] {
  if (heatFound === undefined || (heatFound >= believedShare.least && heatFound <= believedShare.most))
    return [];
  return [
    remark(
      car,
      'figure-heat-balance',
      car.spec.running.log === undefined ? 'running.fuel-use' : 'running.log',
      {
        message: 'the water used and the fuel used do not go together',
        found: `${Math.round(heatFound * 100)} in 100 of the fuel’s heat in the steam`,
        expected: '50 to 80 in 100, as boilers of the kind give',
        mend: 'look at the units of both readings; look for a leak, or a can of fuel that was not written down',
      },
    ),
  ];
}
