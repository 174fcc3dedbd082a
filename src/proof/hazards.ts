/** Steps that do something dangerous, as the model sees it, and the cautions that must stand by them. */
import type { PartId } from '../car/car';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { drainsOfGlass, glassDrains } from '../procedure/duty/waterParts';
import type { Chain } from './chain';
import type { Day } from './day';
import { type Experience, Question } from './experience';
import { stepWords } from './findings';
import type { Model } from './model';
import { firstFlame } from './rules/coldStart';
import { blowsDown } from './rules/firesOutForBlowDown';
import type { StepView } from './rules/rule';
import { at, burns, isLit, of } from './state';
import { no, pressure, shut, steam } from './values';

/** The kinds of danger. */
export const hazards = [
  'first-flame',
  'torch-lit',
  'pilot-lit',
  'main-fuel-on',
  'fuel-tank-opened',
  'pressure-let-off',
  'tank-charged',
  'boiler-filled-by-hose',
  'boiler-tap-opened',
  'blown-down',
  'steam-to-engine',
  'fuel-poured',
  'tube-put-on',
  'igniter-seen',
  'vaporizer-proven',
  'glass-blown',
  'superheater-cooled',
  'level-before-fire',
  'valve-table',
  'left-with-steam',
] as const;

/** One kind of danger. */
export type Hazard = (typeof hazards)[number];

/** What each is, for the finding. */
const words: Readonly<Record<Hazard, string>> = {
  'first-flame': 'lights the first flame',
  'torch-lit': 'lights a torch',
  'pilot-lit': 'lights a pilot',
  'main-fuel-on': 'lets main fuel on',
  'fuel-tank-opened': 'opens a fuel tank',
  'pressure-let-off': 'lets the pressure off a fuel tank',
  'tank-charged': 'charges a tank',
  'boiler-filled-by-hose': 'fills the boiler by hose',
  'boiler-tap-opened': 'opens a tap of the boiler under pressure',
  'blown-down': 'blows the boiler down',
  'steam-to-engine': 'lets steam to the engine',
  'fuel-poured': 'pours fuel',
  'tube-put-on': 'puts the clear tube on',
  'igniter-seen': 'looks at what lights the main burner, before it is lit',
  'vaporizer-proven': 'decides that the vaporizer is hot enough',
  'glass-blown': 'works the cocks of a glass under pressure',
  'superheater-cooled': 'lets steam through the superheater',
  'level-before-fire': 'reads the level before a fire',
  'valve-table': 'goes through the valves before the car is left',
  'left-with-steam': 'leaves a car that has steam to somebody else',
};

function hasSteam({ model, before }: StepView): boolean {
  return at(before, model.slots.steam) !== steam.none;
}

function opened({ model, before, after }: StepView, valve: PartId): boolean {
  return of(before, model.slots.valve, valve) === shut && of(after, model.slots.valve, valve) !== shut;
}

/** Valves through which the boiler lets out to the outside, blow-down left out. */
function taps({ car }: Model): readonly PartId[] {
  return (car.plant.out.get('boiler') ?? []).flatMap(({ to }) => {
    const outside = (car.plant.out.get(to) ?? []).some((pipe) => car.parts.get(pipe.to)?.kind === 'outside');
    return outside && to in car.spec.valves && !car.spec.boiler['blow-down'].includes(to) ? [to] : [];
  });
}

/** A drain of a glass is opened, or, of a glass without one, the step itself stands for blowing it through. */
function blowsGlass(view: StepView): boolean {
  const { car } = view.model;
  if (glassDrains(car).some((id) => opened(view, id))) return true;
  const { part = '', proves } = view.step;
  return proves.includes('glass-true') && drainsOfGlass(car, part).length === 0;
}

const does: Readonly<Record<Hazard, (view: StepView) => boolean>> = {
  'first-flame': firstFlame,
  'torch-lit': ({ model, before, after }) =>
    model.torches.some((id) => burns(model, after, id) && !burns(model, before, id)),
  'pilot-lit': ({ model, newlyLit }) => newlyLit.some((id) => model.pilots.includes(id)),
  'main-fuel-on': ({ model, before, newlyFedMains }) => newlyFedMains.some((id) => !isLit(model, before, id)),
  'fuel-tank-opened': ({ model, before, after }) =>
    model.fuelTanks.some(
      (id) => of(before, model.slots.cap, id) !== no && of(after, model.slots.cap, id) === no,
    ),
  'pressure-let-off': ({ model, before, after }) =>
    model.chargedTanks.some(
      (id) =>
        of(before, model.slots.pressure, id) !== pressure.none &&
        of(after, model.slots.pressure, id) === pressure.none,
    ),
  'tank-charged': ({ step, model }) =>
    step.action === 'charge' && model.chargedTanks.includes(step.part ?? ''),
  'boiler-filled-by-hose': ({ step }) => step.action === 'fill' && step.part === 'boiler',
  'boiler-tap-opened': (view) => hasSteam(view) && taps(view.model).some((id) => opened(view, id)),
  'blown-down': (view) => hasSteam(view) && blowsDown(view),
  'steam-to-engine': (view) => hasSteam(view) && opened(view, view.model.car.spec.engine.throttle),
  'fuel-poured': ({ model, step }) => step.action === 'fill' && model.fuelTanks.includes(step.part ?? ''),
  'tube-put-on': ({ model, step }) =>
    step.action === 'place' && model.car.spec.equipment[step.part ?? '']?.kind === 'tube',
  'igniter-seen': ({ step, procedure }) =>
    procedure.phase !== 'pilot' && procedure.phase !== 'soak' && step.proves.includes('igniter-proven'),
  'vaporizer-proven': ({ step }) => step.proves.includes('vaporizer-hot'),
  'glass-blown': (view) => hasSteam(view) && blowsGlass(view),
  'superheater-cooled': ({ step }) => step.proves.includes('superheater-flowed'),
  'level-before-fire': ({ step, procedure }) =>
    ['pilot', 'soak', 'main-burner'].includes(procedure.phase) && step.proves.includes('level-known'),
  'valve-table': ({ step }) => step.proves.includes('valves-parked'),
  'left-with-steam': (view) => hasSteam(view) && view.step.proves.includes('somebody-with-car'),
};

const dangers = new Question((view) => hazards.filter((hazard) => does[hazard](view)));

/** Steps that do something dangerous without the caution for it. */
export function missingCautions(
  experience: Experience,
  chain: Pick<Chain, 'runs'>,
  day: Day,
): readonly Diagnostic[] {
  const found = new Map<string, Diagnostic>();
  for (const { procedure, trace } of chain.runs) {
    if (procedure.phase === 'emergency') continue;
    for (const moment of trace.moments) {
      for (const hazard of experience.ask(dangers, procedure, moment).answer) {
        const asked = day.cautions.get(hazard) ?? [];
        const key = `${procedure.id} ${moment.step.id} ${hazard}`;
        if (asked.length === 0 || found.has(key)) continue;
        const stands = [...procedure.cautions, ...moment.step.cautions].some((caution) =>
          asked.includes(caution.id),
        );
        if (!stands)
          found.set(key, missing(stepWords(procedure, moment.step), moment.step.origin.at, hazard, asked));
      }
    }
  }
  return [...found.values()];
}

function missing(step: string, spot: Diagnostic['at'], hazard: Hazard, asked: readonly string[]): Diagnostic {
  return {
    code: 'proof-caution-missing',
    severity: 'error',
    ...(spot === undefined ? {} : { at: spot }),
    message: `${step}: this ${words[hazard]}, and no caution stands by it`,
    expected: asked.map((id) => `\`${id}\``).join(' or '),
    mend: 'give the step, or its procedure, that caution',
  };
}
