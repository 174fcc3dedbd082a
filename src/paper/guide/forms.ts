/** The form of the prose files: what the papers say beside procedures, filtered and worded for one car. */
import * as z from 'zod';
import { calledForForm } from '../../procedure/calledFor';
import { conditionForm, selectorForm } from '../../procedure/libraryForm';
import { phases } from '../../procedure/procedure';
import { choice, key, measure, sentences, words, yesNo } from '../../spec/schema/field';
import { interval, oilers, oilingStates } from '../../spec/schema/upkeep';

const when = conditionForm.meta({ description: 'Cars it is for; left out, every car.' }).optional();
const each = selectorForm.meta({ description: 'Said once for each of these parts.' }).optional();
const of = selectorForm.meta({
  description: 'The parts it is about; left out of the paper if the car has none.',
});
const text = (description: string) => words(description, 'Look at it.');
const texts = (description: string) => sentences(description, '[Look at it.]');
const list = <T extends z.ZodType>(entry: T) => z.array(entry).min(1);

/** The number of a safety sign of ISO 7010. */
const signNumber = z
  .string()
  .regex(/^[A-Z]\d{3}$/)
  .meta({ description: 'The number of a safety sign of ISO 7010.', sample: 'W021' });

/** One thing to do, with what is seen when it is done. */
const act = z.strictObject({
  say: text('The act.'),
  result: text('What is seen.'),
  when,
  for: each,
});

/** Times on the way up that a row of the run sheet may wait for. */
export const milestones = ['gauge-alive', 'least-to-move', 'working'] as const;

/** `docent.yaml`: the museum’s guide. */
export const docentForm = z.strictObject({
  parts: list(z.strictObject({ of, says: texts('Two sentences that a child follows.').length(2), when })),
  questions: list(z.strictObject({ ask: text('What visitors ask.'), says: texts('The answer.'), when })),
  'never-touch': list(z.strictObject({ of, why: text('Why not.') })),
  'never-touch-else': z.strictObject({
    what: text('What no row above has named.'),
    why: text('Why not.'),
  }),
  'proof-of-cold': list(act),
  roles: list(
    z.strictObject({ name: text('The role.'), does: texts('What they do.'), stands: text('Where.') }),
  ),
  distances: list(
    z.strictObject({
      from: text('From where.'),
      short: text('The same in a few words, for the drawing.'),
      around: choice(
        ['car', 'way'],
        'What it is kept from, if no part: all of the car, or its way.',
        'car',
      ).optional(),
      of: of.optional(),
      least: measure('length', 'The least distance suggested.', '3 m'),
      fuel: yesNo('It is kept while fuel is handled, before anything is lit, and then no more.').optional(),
      why: text('Why.'),
      when,
    }),
  ),
  signs: list(z.strictObject({ sign: signNumber, say: text('Where it is put up.'), when })),
  weather: list(z.strictObject({ sign: text('What the weather does.'), act: text('What is done.') })),
  decides: list(z.strictObject({ what: text('What is decided.'), who: text('Who decides it.'), when })),
  go: list(z.strictObject({ say: text('What must be so.'), when, for: each })),
  'run-sheet': list(
    z.strictObject({
      takes: z.number().int().min(0).meta({ description: 'Minutes allowed.' }).optional(),
      plans: key
        .meta({ description: 'It lasts as long as this part of `timeline.yaml` does in good time.' })
        .optional(),
      waits: choice(
        ['burning-on'],
        'It lasts as long as this car’s burner burns on after its fuel is shut.',
        'burning-on',
      ).optional(),
      fire: yesNo('The main burner is lit in this row: minute 0.').optional(),
      until: choice(milestones, 'It comes when steam stands at this.', 'working').optional(),
      gate: yesNo('Go or no go is decided here.').optional(),
      phases: z
        .array(z.enum(phases))
        .meta({ description: 'The procedures that are carried out meanwhile.' })
        .optional(),
      who: text('Who acts.'),
      do: text('What is done.'),
      tell: text('What is said to the public.').optional(),
      when,
    }),
  ),
  trouble: list(
    z.strictObject({
      emergency: key.meta({ description: 'The procedure of the library it goes with.' }),
      public: text('What whoever minds the public does.'),
    }),
  ),
  access: list(z.strictObject({ title: text('For whom.'), says: texts('What helps.') })),
});

/** `readings.yaml`: what gauges and tanks should read. */
export const readingsForm = z.strictObject({
  gauges: list(
    z.strictObject({
      for: each,
      of,
      cold: text('What it shows on a cold car.'),
      ready: text('What it shows when the car is ready to move off.'),
      road: text('What it shows on the road.'),
      stop: text('The reading at which one stops.'),
    }),
  ),
  tanks: list(
    z.strictObject({
      for: each,
      of,
      full: text('How it is filled.'),
      start: text('The least a day begins with.'),
      road: text('The least on the road.'),
    }),
  ),
});

/** `use.yaml`: what the car is for, what it is not, what danger stays, who may run it, what helps who is hurt. */
export const useForm = z.strictObject({
  intended: list(z.strictObject({ say: text('What it is for.'), when })),
  misuse: list(
    z.strictObject({ act: text('What somebody might do.'), harm: text('What comes of it.'), when }),
  ),
  residual: list(
    z.strictObject({ say: text('The danger that stays.'), keep: text('What keeps it small.'), when }),
  ),
  shown: list(z.strictObject({ role: text('Who.'), must: texts('What they must have been shown.'), when })),
  hurt: list(
    z.strictObject({
      what: text('What has happened to somebody.'),
      do: texts('What is done, in order.'),
      never: text('What is not done.'),
      when,
    }),
  ),
});

/** `running.yaml`: what to watch, and how to drive it when the road is not level or the weather not kind. */
export const runningForm = z.strictObject({
  scan: list(
    z.strictObject({
      what: text('What is looked at.'),
      often: text('How often.'),
      good: text('What good is like.'),
      bad: text('What is not good, and what to do.'),
      when,
      for: each,
    }),
  ),
  senses: list(
    z.strictObject({
      sense: text('Sound, smell, feel.'),
      good: text('As it should be.'),
      bad: text('As it should not.'),
      when,
    }),
  ),
  road: list(
    z.strictObject({
      id: key,
      title: text('The heading.'),
      says: list(z.strictObject({ say: text('A sentence.'), when })),
      when,
    }),
  ),
});

/** `subjects.yaml`: what somebody looks up in the index who does not know the name of the part. */
export const subjectsForm = z.strictObject({
  subjects: list(
    z.strictObject({
      subject: text('What is looked up.'),
      when,
      at: list(
        z.union([
          z.strictObject({ procedure: key.meta({ description: 'Key of a procedure.' }) }),
          z.strictObject({ fault: key.meta({ description: 'Key of a sign of a fault.' }) }),
          z.strictObject({ road: key.meta({ description: 'Key of a page of `running.yaml`.' }) }),
          z.strictObject({ job: key.meta({ description: 'Key of a job of `upkeep.yaml`.' }) }),
          z.strictObject({
            section: key.meta({ description: 'Name of a heading in the templates of the manual.' }),
            say: text('What is found there.'),
            when,
          }),
        ]),
      ),
    }),
  ),
});

/** How a boiler can be when something is inspected, in the order in which a season begins. */
export const boilerStates = ['empty', 'cold', 'steam'] as const;

/** `upkeep.yaml`: maintenance and how it is done, inspection, what is carried, disposal. */
export const upkeepForm = z.strictObject({
  tasks: list(
    z.strictObject({
      what: text('What is done.'),
      seen: text('How it is done and what is seen, where that is said in the table itself.').optional(),
      job: key.meta({ description: 'The job that tells how.' }).optional(),
      chart: choice(['oiling'], 'The chart that tells where.', 'oiling').optional(),
      every: interval,
      who: choice(['keeper', 'trade', 'inspector'], 'Who does it.', 'keeper'),
      when,
      for: each,
    }),
  ),
  oiling: list(
    z.strictObject({
      id: key.meta({ description: 'Its key, by which a spec puts its own point in its place.' }),
      point: text('What is oiled or greased.'),
      place: text('Where it is, for a point that belongs to a part.').optional(),
      lubricant: text('What oil or grease.'),
      amount: text('How much.'),
      every: interval,
      state: choice(oilingStates, 'How the car is for it.', 'cold'),
      who: choice(oilers, 'Who does it.', 'keeper'),
      when,
      for: each,
    }),
  ),
  'not-oiled': list(
    z.strictObject({ what: text('What is kept free of oil.'), why: text('Why.'), when, for: each }),
  ),
  inspection: list(
    z.strictObject({
      part: text('The part of the car.'),
      look: text('What is looked at.'),
      who: choice(['keeper', 'trade', 'inspector'], 'Who looks.', 'inspector'),
      boiler: choice(boilerStates, 'How the boiler has to be for it.', 'cold'),
      when,
      for: each,
    }),
  ),
  carried: list(
    z.strictObject({
      kind: choice(['spare', 'tool', 'consumable'], 'What it is.', 'spare'),
      name: text('What it is called.'),
      why: text('What for.'),
      when,
    }),
  ),
  'called-for': list(calledForForm),
  jobs: list(
    z.strictObject({
      id: key.meta({ description: 'Its key.' }),
      title: text('What the keeper does.'),
      ready: text('How the car has to be, and what has to lie ready.'),
      steps: list(z.strictObject({ do: text('What is done.'), see: text('What is to be seen.'), when })),
      when,
    }),
  ),
  disposal: list(
    z.strictObject({ what: text('What is left over.'), how: text('What to do with it.'), when }),
  ),
});

/** `crew.yaml`: for a visiting driver, for the helper, for the log of a day. */
export const crewForm = z.strictObject({
  visiting: z.strictObject({
    hurts: list(key).meta({
      description: 'Cautions by key; the first five that the car’s papers hold are printed.',
    }),
    stop: key.meta({ description: 'The procedure that shuts everything.' }),
    start: list(key).meta({ description: 'The procedures of the second side, in order.' }),
  }),
  'burner-front': z.strictObject({
    phases: z.array(z.enum(phases)).min(1),
    stand: list(
      z.strictObject({
        say: text('Where to stand, what to hold.'),
        sign: signNumber.optional(),
        when,
        for: each,
      }),
    ),
    'stop-at': list(
      z.strictObject({ sign: text('What is seen.'), call: text('What is called.'), when, for: each }),
    ),
  }),
  dark: z.strictObject({
    shut: key.meta({ description: 'The procedure whose seated steps shut everything.' }),
    before: list(z.strictObject({ say: text('What is said before anything is touched.'), when, for: each })),
    find: list(z.strictObject({ of })).meta({ description: 'What is to be found without light.' }),
    look: list(
      z.strictObject({ what: text('What is looked at.'), good: text('As it should be.'), when, for: each }),
    ),
  }),
  log: z.strictObject({
    before: list(z.strictObject({ what: text('What is written down.'), when, for: each })),
    times: list(z.strictObject({ what: text('What is timed.'), when })),
    after: list(
      z.strictObject({
        what: text('What is written down.'),
        lines: z
          .number()
          .int()
          .min(1)
          .max(2)
          .meta({ description: 'Lines to write on; two if left out.' })
          .optional(),
        when,
      }),
    ),
  }),
});
