/**
 * What profiles led to: each change measured on the version before and after it, in one run. They are not measured again with
 * the page, because what was there before is no longer there.
 */
export const improvements: readonly (readonly [seen: string, done: string, before: string, after: string])[] = [
  [
    'Curves of the lye tables were made on import, and every call looked up shared figures anew',
    'a curve makes its pieces when first asked; what lye functions share is worked out once',
    '`planLye` of five fats: 2.55 times plain decimals',
    '2.07 times',
  ],
  [
    'Four decimal comparisons for every mass that was read, a text made of a limit that nobody had set',
    'the exponent of a mass tells its size; limits are decimals',
    '`planLye` of five fats: 2.08 times plain decimals',
    '1.88 times',
  ],
  [
    'Half of an audit went into looking for slips of figures that were right',
    'slips are looked for only where a figure is contradicted',
    '`auditRecipe` of a drawn recipe: 2780 µs of processor time',
    '1560 µs',
  ],
  [
    'A recipe that prints the parts of its pot was audited whole to get its verdict',
    'those parts are compared by their own check, in exact decimals',
    '`verdictsOf`: 211 µs of processor time for each drawn recipe',
    '181 µs',
  ],
  [
    'What the whole pot is made of was worked out at every end of its volumes and last digits',
    'that is done only for a printed part which the pot as weighed does not give',
    '`verdictsOf`: 183 µs of processor time for each drawn recipe',
    '95 µs',
  ],
];
