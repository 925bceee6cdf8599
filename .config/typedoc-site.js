// What the site needs of TypeDoc beyond its options: the reference by layer, and links to the live page.
import { CommentTag, Converter, PageEvent, ReflectionKind } from 'typedoc';

const NAMED = ReflectionKind.Class | ReflectionKind.Interface | ReflectionKind.TypeAlias | ReflectionKind.Variable;

/** The heading of a layer is its folder in words. */
const headingOf = (folder) =>
  folder.charAt(0).toUpperCase() + folder.slice(1).replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** @param {import('typedoc').Application} app */
export function load(app) {
  // The layer of a name is the folder it is declared in, so that no doc comment has to say it.
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => {
    const order = app.options.getValue('categoryOrder');
    const tag = (reflection) => {
      const heading = headingOf(project.getSymbolIdFromReflection(reflection).packagePath.split('/')[1]);
      if (!order.includes(heading)) throw new Error(`typedoc.json, categoryOrder: no place for ${heading}`);
      return new CommentTag('@category', [{ kind: 'text', text: heading }]);
    };
    for (const reflection of project.getReflectionsByKind(NAMED)) {
      if (reflection.parent?.kindOf(ReflectionKind.Module)) reflection.comment?.blockTags.push(tag(reflection));
    }
    for (const reflection of project.getReflectionsByKind(ReflectionKind.Function)) {
      for (const { comment } of reflection.signatures ?? []) comment?.blockTags.push(tag(reflection));
    }
  });

  // The guides link to the live page by its source in the project; on the site it stands built.
  app.renderer.on(PageEvent.END, (page) => {
    const up = '../'.repeat(page.url.split('/').length - 1);
    page.contents = page.contents.replaceAll(
      /href="(?:(?:\.\.\/)*media\/live\.html|live\/index\.html)"/g,
      `href="${up}live/index.html"`,
    );
  });
}
