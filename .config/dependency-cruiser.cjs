// The path of a number: each layer may import only from those before it. `fats` and `lye` do not know each other.
const before = {
  numbers: [],
  sources: ['numbers'],
  chemistry: ['numbers', 'sources'],
  quantities: ['sources', 'numbers', 'chemistry'],
  fats: ['sources', 'numbers', 'chemistry', 'quantities'],
  lye: ['sources', 'numbers', 'chemistry', 'quantities'],
};
before.saponification = [...before.fats, 'fats', 'lye'];
before.composition = [...before.saponification, 'saponification'];
before.freeAlkali = [...before.composition, 'composition'];
before.base = [...before.composition, 'composition'];
before.clarity = [...before.composition, 'composition'];
before.process = [...before.composition, 'composition'];
before.recipe = [...before.composition, 'composition', 'process'];
before.batch = [...before.recipe, 'recipe', 'base', 'clarity'];
before.audit = [...before.recipe, 'recipe', 'freeAlkali'];
before.reports = [...before.batch, 'batch', 'freeAlkali', 'audit'];
before.checkValues = [...before.reports, 'reports'];

const inFolders = (names) => `^src/(${names.join('|')})/`;

const layers = Object.entries(before).map(([layer, allowed]) => ({
  name: `layer-${layer}`,
  comment: `${layer} may import only from itself and ${allowed.join(', ') || 'nothing else'}`,
  severity: 'error',
  from: { path: inFolders([layer]) },
  to: { path: '^src/', pathNot: inFolders([layer, ...allowed]) },
}));

module.exports = {
  forbidden: [
    ...layers,
    {
      name: 'known-layer',
      comment: 'a file of src lies in a layer named above, or is the public surface',
      severity: 'error',
      from: {},
      to: { path: '^src/', pathNot: ['^src/index\\.ts$', inFolders(Object.keys(before))] },
    },
    {
      name: 'public-surface',
      comment: 'src/index.ts is the surface from sources to process; the layers after it have entries of their own',
      severity: 'error',
      from: { path: '^src/index\\.ts$' },
      to: { path: '^src/', pathNot: inFolders([...before.freeAlkali, 'freeAlkali', 'base', 'clarity', 'process']) },
    },
    {
      name: 'bibliography-texts',
      comment: 'the texts of the bibliography are heavy: only sources itself reads them',
      severity: 'error',
      from: { path: '^src/', pathNot: inFolders(['sources']) },
      to: { path: '^src/sources/data/' },
    },
    {
      name: 'published-records',
      comment: 'the provenance of each cell is heavy: only reports reads it',
      severity: 'error',
      from: { path: '^src/', pathNot: inFolders(['reports']) },
      to: { path: '^src/(fats/data/publishedFatRecords|composition/data/solventRecords)\\.ts$' },
    },
    {
      name: 'no-cycles',
      comment: 'type-only imports count too',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-node',
      comment: 'src is pure: it runs in a browser as well',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'known-packages',
      comment: 'decimal.js and leven are the only packages src may import',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/recipe/' },
      to: { path: 'node_modules/', pathNot: 'node_modules/(decimal\\.js|leven)/' },
    },
    {
      name: 'known-packages-of-recipe',
      comment: 'and valibot, which reads recipes',
      severity: 'error',
      from: { path: '^src/recipe/' },
      to: { path: 'node_modules/', pathNot: 'node_modules/(decimal\\.js|leven|valibot)/' },
    },
    {
      name: 'resolvable',
      comment: 'an import that leads nowhere',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'default'] },
  },
};
