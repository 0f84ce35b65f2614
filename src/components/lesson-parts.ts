import Aside from './Aside.astro';
import Calculator from './Calculator.astro';
import ExampleLink from './ExampleLink.astro';
import Fade from './Fade.astro';
import Formula from './Formula.astro';
import Num from './Num.astro';
import PitchTable from './PitchTable.astro';
import Predict from './Predict.astro';
import Question from './Question.astro';
import Sym from './Sym.astro';

/** What a lesson may use without importing it. */
export const lessonParts = { Aside, Calculator, ExampleLink, Fade, Formula, Num, PitchTable, Predict, Question, Sym };
