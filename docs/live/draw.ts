/** Draws charts into the page, and keeps to the last ones asked for while the form is still being filled in. */
import type { Chart } from 'laurate/reports';
import { parse, View } from 'vega';
import { compile } from 'vega-lite';

/** Long enough for the next key to come. */
const PAUSE = 150;
let next: number | undefined;
let views: readonly View[] = [];

/** Draws the charts anew after a pause; `aria-busy` says until when the old ones stand. */
export function draw(place: HTMLElement, charts: readonly Chart[]): void {
  window.clearTimeout(next);
  place.setAttribute('aria-busy', 'true');
  next = window.setTimeout(() => {
    const drawn = charts.map((chart) => ({ figure: document.createElement('div'), spec: compile(chart).spec }));
    for (const view of views) view.finalize();
    views = drawn.map(
      ({ figure, spec }) => new View(parse(spec), { renderer: 'svg', container: figure, hover: false }),
    );
    place.replaceChildren(...drawn.map(({ figure }) => figure));
    const asked = next;
    void Promise.all(views.map((view) => view.runAsync())).then(() => {
      if (asked === next) place.setAttribute('aria-busy', 'false');
    });
  }, PAUSE);
}
