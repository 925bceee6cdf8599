import {
  compositionFromSteps,
  type AdditionInput,
  type Composition,
  type SolventAdditionInput,
} from '../composition/index.js';
import { givenCharge, type LyeChargeInput } from '../lye/index.js';
import { frozen, refuse, type Decimal, type Steps } from '../numbers/index.js';
import type { Mass } from '../quantities/index.js';
import { soapFromLyeSteps, type SoapFromLyeResult } from '../saponification/index.js';
import type { Fat } from '../fats/index.js';
import { lossOf, type GivenBatchOptions } from './readBatchOptions.js';
import type { WeighedRecipe } from './weighing.js';

/** What goes into the pot, as functions take it. */
export interface PotInput {
  readonly fats: readonly { readonly fat: Fat; readonly mass: Mass }[];
  readonly lye: readonly LyeChargeInput[];
  readonly water: Mass;
}

/** A batch in the pot: what went in, what became of it, and what is there in the end. */
export interface BatchPot {
  readonly input: PotInput;
  readonly additions: readonly AdditionInput[];
  readonly soap: SoapFromLyeResult;
  readonly composition: Composition;
}

/** Puts together what is weighed. */
export function potOf(weighed: WeighedRecipe, factor: Decimal, options: GivenBatchOptions, steps?: Steps): BatchPot {
  const input: PotInput = frozen({
    fats: frozen(weighed.fats.map(({ fat, grams }) => frozen({ fat, mass: frozen({ g: grams }) }))),
    lye: frozen(weighed.lye.map(givenCharge)),
    water: frozen({ g: weighed.water }),
  });
  const additions = frozen(weighed.additions.map(additionOf));
  const soap = soapFromLyeSteps(input, steps);
  const loss = lossOf(options);
  const composition = compositionFromSteps(
    {
      soap,
      additions,
      ...(loss.isZero() ? {} : { evaporated: { g: loss.times(factor) } }),
      ...(options.spiritShareOfLoss === undefined ? {} : { spiritShareOfLoss: options.spiritShareOfLoss }),
    },
    steps,
  );
  return { input, additions, soap, composition };
}

function additionOf({ row, grams }: WeighedRecipe['additions'][number], at: number): AdditionInput {
  const mass = frozen({ g: grams });
  if (row.solvent === undefined) return frozen({ name: row.name, mass });
  if (row.assay === undefined && row.solvent !== 'water') {
    refuse(
      'missing',
      `additions[${String(at)}].assay`,
      `what of the ${row.solvent} as sold is ${row.solvent}`,
      undefined,
    );
  }
  // the schema has seen that percent by volume stands with ethanol only
  const held = {
    solvent: row.solvent,
    ...(row.assay === undefined ? {} : { assay: row.assay }),
  } as SolventAdditionInput;
  return frozen({ ...held, mass });
}
