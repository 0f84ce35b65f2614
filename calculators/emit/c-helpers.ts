import type { Helper } from './helpers.ts';

/** Below this share of its terms a sum in float is taken for the dust of rounding: eight units in the last place. */
const dust = '1e-6f';

export const cHelpers: readonly Helper[] = [
  {
    name: 'larger',
    text: `static float larger(float a, float b)
{
    return a > b || isnan(a) ? a : b;
}`,
  },
  {
    name: 'smaller',
    text: `static float smaller(float a, float b)
{
    return a < b || isnan(a) ? a : b;
}`,
  },
  {
    name: 'square',
    text: `static float square(float a)
{
    return a * a;
}`,
  },
  {
    name: 'plus',
    text: `/* a + b, or 0 where the two cancel but for rounding. */
static float plus(float a, float b)
{
    const float both = a + b;
    return isfinite(both) && fabsf(both) <= ${dust} * larger(fabsf(a), fabsf(b)) ? 0.0f : both;
}`,
  },
  {
    name: 'minus',
    text: `static float minus(float a, float b)
{
    return plus(a, -b);
}`,
  },
  {
    name: 'total_of',
    text: `/* The sum, 0 where only rounding is left. */
static float total_of(const float *list, int length)
{
    float total = 0.0f;
    float top = 0.0f;
    for (int k = 0; k < length; k++) {
        total += list[k];
        top = larger(top, fabsf(list[k]));
    }
    return isfinite(total) && fabsf(total) <= ${dust} * top ? 0.0f : total;
}`,
  },
  {
    name: 'plus3',
    text: `static float plus3(float a, float b, float c)
{
    const float list[] = {a, b, c};
    return total_of(list, 3);
}`,
  },
  {
    name: 'plus4',
    text: `static float plus4(float a, float b, float c, float d)
{
    const float list[] = {a, b, c, d};
    return total_of(list, 4);
}`,
  },
  {
    name: 'sine',
    text: `/* The sine, 0 where only rounding is left: sinf(3.14159265f) is not 0. */
static float sine(float a)
{
    const float value = sinf(a);
    return fabsf(a) > 1.0f && fabsf(value) < ${dust} * fabsf(a) ? 0.0f : value;
}`,
  },
  {
    name: 'cosine',
    text: `static float cosine(float a)
{
    const float value = cosf(a);
    return fabsf(value) < ${dust} * larger(1.0f, fabsf(a)) ? 0.0f : value;
}`,
  },
  {
    name: 'tangent',
    text: `static float tangent(float a)
{
    return sine(a) / cosine(a);
}`,
  },
  {
    name: 'within_one',
    text: `/* What rounding has carried past 1 is 1; what is larger stays, and has no arc. */
static float within_one(float a)
{
    return fabsf(a) > 1.0f && fabsf(a) < 1.000001f ? copysignf(1.0f, a) : a;
}`,
  },
  {
    name: 'arcsine',
    text: `static float arcsine(float a)
{
    return asinf(within_one(a));
}`,
  },
  {
    name: 'arccosine',
    text: `static float arccosine(float a)
{
    return acosf(within_one(a));
}`,
  },
  {
    name: 'sign_of',
    text: `static float sign_of(float a)
{
    return a > 0.0f ? 1.0f : a < 0.0f ? -1.0f : a;
}`,
  },
  {
    name: 'snapped',
    text: `/* Halves and whole numbers missed by two units in the last place are meant. */
static float snapped(float a)
{
    const float near = floorf(2.0f * a + 0.5f) / 2.0f;
    return fabsf(a - near) <= 2.4e-7f * fabsf(a) ? near : a;
}`,
  },
  {
    name: 'modulo',
    text: `static float modulo(float a, float b)
{
    return minus(a, b * floorf(snapped(a / b)));
}`,
  },
  {
    name: 'sum_of',
    text: `static float sum_of(const float *list, int length)
{
    float total = 0.0f;
    for (int k = 0; k < length; k++) {
        total += list[k];
    }
    return total;
}`,
  },
  {
    name: 'largest_of',
    text: `static float largest_of(const float *list, int length)
{
    float found = -HUGE_VALF;
    for (int k = 0; k < length; k++) {
        found = larger(found, list[k]);
    }
    return found;
}`,
  },
  {
    name: 'smallest_of',
    text: `static float smallest_of(const float *list, int length)
{
    float found = HUGE_VALF;
    for (int k = 0; k < length; k++) {
        found = smaller(found, list[k]);
    }
    return found;
}`,
  },
  {
    name: 'all_finite',
    text: `static bool all_finite(const float *list, int length)
{
    for (int k = 0; k < length; k++) {
        if (!isfinite(list[k])) {
            return false;
        }
    }
    return true;
}`,
  },
  {
    name: 'between_rows',
    text: `/* From a table with rising first column, by a straight line between two rows; NAN outside it. */
static float between_rows(const float (*rows)[2], int length, float at)
{
    const float slack = 1e-6f * fabsf(at);
    if (!(at >= rows[0][0] - slack && at <= rows[length - 1][0] + slack)) {
        return NAN;
    }
    int k = 1;
    while (k < length - 1 && at > rows[k][0]) {
        k++;
    }
    return rows[k - 1][1] + (rows[k][1] - rows[k - 1][1]) * (at - rows[k - 1][0]) / (rows[k][0] - rows[k - 1][0]);
}`,
  },
  {
    name: 'at_row',
    text: `/* From a table, at one of its rows; NAN elsewhere. */
static float at_row(const float (*rows)[2], int length, float at)
{
    for (int k = 0; k < length; k++) {
        if (fabsf(rows[k][0] - at) <= 1e-6f * fabsf(at)) {
            return rows[k][1];
        }
    }
    return NAN;
}`,
  },
];

/** Words that a name must not be: the language's own (C99 to C23, and C++), what the two headers define, and ours. */
export const cTaken: ReadonlySet<string> = new Set([
  ...`auto break case char const continue default do double else enum extern float for goto if inline int long register
  restrict return short signed sizeof static struct switch typedef union unsigned void volatile while alignas alignof
  bool constexpr false nullptr static_assert thread_local true typeof typeof_unqual asm and and_eq bitand bitor catch
  class co_await co_return co_yield compl concept const_cast consteval constinit decltype delete dynamic_cast explicit
  export friend import module mutable namespace new noexcept not not_eq operator or or_eq private protected public
  reinterpret_cast requires static_cast template this throw try typeid typename using virtual wchar_t xor xor_eq
  main linux unix signgam
  NAN INFINITY HUGE_VAL HUGE_VALF HUGE_VALL FP_NAN FP_INFINITE FP_ZERO FP_SUBNORMAL FP_NORMAL MATH_ERRNO
  MATH_ERREXCEPT math_errhandling isfinite isinf isnan isnormal signbit fpclassify isgreater isgreaterequal isless
  islessequal islessgreater isunordered float_t double_t`.split(/\s+/),
  ...`acos asin atan atan2 cos sin tan acosh asinh atanh cosh sinh tanh exp exp2 expm1 frexp ilogb ldexp log log10 log1p
  log2 logb modf scalbn scalbln cbrt fabs hypot pow sqrt erf erfc lgamma tgamma ceil floor nearbyint rint lrint llrint
  round lround llround trunc fmod remainder remquo copysign nan nextafter nexttoward fdim fmax fmin fma`
    .split(/\s+/)
    .flatMap((name) => [name, `${name}f`, `${name}l`]),
  ...'j0 j1 jn y0 y1 yn gamma gammaf drem significand finite scalb abs min max sq radians degrees'.split(' '),
  ...'given result wheel wheels low high middle halving at_low at_high at_middle'.split(' '),
  ...cHelpers.map((helper) => helper.name),
]);
