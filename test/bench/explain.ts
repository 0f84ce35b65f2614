import { cpus } from 'node:os';
import { WARM_UP } from './response-time.ts';
import { SLOW_DOWN } from './slowed-page.ts';

/** What is measured, and what the figures do not say. */
export function explain(browserVersion: string): string {
  const [cpu] = cpus();
  return `Measured on ${cpus().length} × ${cpu?.model ?? 'unknown processor'}, Node ${process.versions.node}, Chromium ${browserVersion}.

The lesson: test/bench/lesson.mdx, about 700 words, three formulas and one calculator, built by the project's own build
among all its other pages. Loads are cold, each number the median of 5, from a local host with brotli at its best, no
delay and no limit of bandwidth. In the browser everything is slowed ${SLOW_DOWN} times: times are those of a slow machine on
a fast line. Sizes are exact; kB are thousands of bytes.

The page by hand: test/bench/hand-written, with the same prose, formulas, figure, fields and results. It has one
stylesheet, for this page only; system fonts for text; formulas set once by KaTeX, with KaTeX's own stylesheet and fonts.
What counts against the site: its text face, which the page by hand has none of; and what only the site does: fields that
read units, sentences that say what is wrong, typeset rows of numbers with as many digits as they need, a link that keeps
the inputs. What counts for the site: the fonts of KaTeX, which it cuts down and the page by hand takes whole. What the
cache saves on a second lesson is not measured.

An answer is timed from the browser's own input event to the last change of a number or of the figure in the document.
The first ${WARM_UP} answers, while the browser still compiles the script, are reported apart. A series of 100 that is over
its budget is measured again, up to three times in all, and the best one counts: other processes can only make it slower.
Beside it stands ${SLOW_DOWN} times the processor time of the whole answer in a series at full speed, which leaves other
processes out: judge by it on a busy machine. A plot may come later: the page waits until the typing stops. Builds start
from nothing but warm disk caches.`;
}
