// Compares the public surface, as built, with the reports in docs/api. With --update it rewrites them.
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Extractor, ExtractorConfig, ExtractorLogLevel } from '@microsoft/api-extractor';

const root = fileURLToPath(new URL('..', import.meta.url));
const update = process.argv.includes('--update');
const quiet = { logLevel: ExtractorLogLevel.None };
const failing = { logLevel: ExtractorLogLevel.Error };

const reportFolder = `${root}docs/api`;
mkdirSync(reportFolder, { recursive: true });

/** Names that `laurate` exports, types included: the other entries may show them without exporting them again. */
const inMain = () => {
  const report = `${reportFolder}/laurate.api.md`;
  const text = existsSync(report) ? readFileSync(report, 'utf8') : '';
  return new Set([...text.matchAll(/^export (?:class|const|function|interface|type) (\w+)/gm)].map(([, name]) => name));
};

let good = true;
for (const [entry, report] of [
  ['index', 'laurate'],
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
          includeForgottenExports: false,
        },
        docModel: { enabled: false },
        dtsRollup: { enabled: false },
        tsdocMetadata: { enabled: false },
        newlineKind: 'lf',
        messages: {
          compilerMessageReporting: { default: failing },
          // A type that a public function shows but the entry does not export is a hole in the surface.
          extractorMessageReporting: { default: failing, 'ae-missing-release-tag': quiet, 'ae-unresolved-link': quiet },
          tsdocMessageReporting: { default: failing },
        },
      },
      configObjectFullPath: undefined,
      packageJsonFullPath: `${root}package.json`,
    }),
    {
      localBuild: update,
      messageCallback: (message) => {
        const forgotten = message.messageId === 'ae-forgotten-export' && /"(\w+)"/.exec(message.text)?.[1];
        const chatter = [ExtractorLogLevel.Info, ExtractorLogLevel.Verbose].includes(message.logLevel);
        if (chatter || (entry !== 'index' && inMain().has(forgotten))) message.logLevel = ExtractorLogLevel.None;
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
