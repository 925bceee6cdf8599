// Compares the public surface, as built, with the reports in docs/api. With --update it rewrites them.
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Extractor, ExtractorConfig, ExtractorLogLevel } from '@microsoft/api-extractor';

const root = fileURLToPath(new URL('..', import.meta.url));
const update = process.argv.includes('--update');
const quiet = { logLevel: ExtractorLogLevel.None };
const failing = { logLevel: ExtractorLogLevel.Error };

const reportFolder = `${root}docs/api`;
mkdirSync(reportFolder, { recursive: true });

let good = true;
for (const [entry, report] of [
  ['index', 'laurate'],
  ['recipe', 'laurate-recipe'],
  ['audit', 'laurate-audit'],
  ['reports', 'laurate-reports'],
  ['check-values', 'laurate-check-values'],
]) {
  const { succeeded, apiReportChanged } = Extractor.invoke(
    ExtractorConfig.prepare({
      configObject: {
        projectFolder: root,
        mainEntryPointFilePath: `${root}dist/${entry}.d.ts`,
        compiler: { tsconfigFilePath: `${root}tsconfig.json` },
        apiReport: {
          enabled: true,
          reportFolder,
          reportFileName: `${report}.api.md`,
          reportTempFolder: `${root}coverage/api`,
          // Types that the surface shows without exporting them belong to it; the other entries show those of `laurate`.
          includeForgottenExports: entry === 'index',
        },
        docModel: { enabled: false },
        dtsRollup: { enabled: false },
        tsdocMetadata: { enabled: false },
        newlineKind: 'lf',
        messages: {
          compilerMessageReporting: { default: failing },
          extractorMessageReporting: {
            default: failing,
            // Everything exported is public; the reports show what is not exported; typedoc asks for documentation.
            'ae-missing-release-tag': quiet,
            'ae-forgotten-export': quiet,
            'ae-unresolved-link': quiet,
            'ae-undocumented': quiet,
          },
          tsdocMessageReporting: { default: failing },
        },
      },
      configObjectFullPath: undefined,
      packageJsonFullPath: `${root}package.json`,
    }),
    {
      localBuild: update,
      messageCallback: (message) => {
        const { Info, None, Verbose } = ExtractorLogLevel;
        if ([Info, Verbose].includes(message.logLevel)) message.logLevel = None;
      },
    },
  );
  if (apiReportChanged) {
    console.log(
      update
        ? `docs/api/${report}.api.md: written anew`
        : `docs/api/${report}.api.md: the surface has changed; run npm run api:update and review the difference`,
    );
  }
  good &&= succeeded;
}
if (!good) process.exitCode = 1;
