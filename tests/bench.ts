// Times the built library, each figure against a yardstick taken in turns with it in the same run. Fails where a target is
// missed.
import { adviceFigures } from "./bench/advice";
import { kernelFigures } from "./bench/kernels";
import { pairFigures } from "./bench/pairs";
import { planFigures } from "./bench/plans";
import { rangeTargets } from "./bench/ranges";
import { searchFigures } from "./bench/search";
import { startFigures } from "./bench/start";
import { urlOf } from "./bench/timing";

const figures = [
  ...(await rangeTargets(await import(urlOf("ranges")))),
  ...kernelFigures(),
  ...startFigures(),
  ...searchFigures(),
  ...pairFigures(),
  ...planFigures(),
  ...adviceFigures(),
];
for (const { figure, found, target, held = Number.POSITIVE_INFINITY } of figures) {
  const verdict = found <= target ? "ok    " : "FAILED";
  const worse = found > held ? `, and worse than ${held}, where it was` : "";
  console.log(`${verdict}  ${figure}: ${Number(found.toPrecision(3))}, at most ${target}${worse}`);
}
process.exitCode = figures.every(({ found, target }) => found <= target) ? 0 : 1;
