import type { Helper } from './helpers.ts';

export const pythonHelpers: readonly Helper[] = [
  {
    name: 'total',
    text: `def total(numbers):
    """The sum, 0 where only rounding is left."""
    both = sum(numbers)
    return 0.0 if abs(both) < DUST * max(map(abs, numbers)) else both`,
  },
  {
    name: 'plus',
    text: `def plus(*terms):
    return total(terms)`,
  },
  {
    name: 'minus',
    text: `def minus(a, b):
    return plus(a, -b)`,
  },
  {
    name: 'sine',
    text: `def sine(a):
    """The sine, 0 where only rounding is left: math.sin(math.pi) is not 0."""
    value = math.sin(a)
    return 0.0 if abs(a) > 1 and abs(value) < DUST * abs(a) else value`,
  },
  {
    name: 'cosine',
    text: `def cosine(a):
    value = math.cos(a)
    return 0.0 if abs(value) < DUST * max(1.0, abs(a)) else value`,
  },
  {
    name: 'tangent',
    text: `def tangent(a):
    return sine(a) / cosine(a)`,
  },
  {
    name: 'within_one',
    text: `def within_one(a):
    """What rounding has carried past 1 is 1; what is larger stays, and has no arc."""
    return math.copysign(1.0, a) if 1.0 < abs(a) < 1.0 + 1e-12 else a`,
  },
  {
    name: 'arcsine',
    text: `def arcsine(a):
    return math.asin(within_one(a))`,
  },
  {
    name: 'arccosine',
    text: `def arccosine(a):
    return math.acos(within_one(a))`,
  },
  {
    name: 'sign',
    text: `def sign(a):
    return (a > 0) - (a < 0)`,
  },
  {
    name: 'snapped',
    text: `def snapped(a):
    """Halves and whole numbers missed by a hair are meant."""
    near = math.floor(2 * a + 0.5) / 2
    return near if abs(a - near) <= DUST * abs(a) else a`,
  },
  {
    name: 'modulo',
    text: `def modulo(a, b):
    return minus(a, b * math.floor(snapped(a / b)))`,
  },
  {
    name: 'find_root',
    text: `def find_root(miss, low, high):
    """Where miss is 0 between low and high, by bisection."""
    at_low, at_high = miss(low), miss(high)
    if at_low == 0:
        return low
    if not (at_low < 0 <= at_high or at_low > 0 >= at_high):
        raise ValueError("there is no solution between the ends")
    for _ in range(100):
        middle = (low + high) / 2
        if (miss(middle) < 0) == (at_low < 0):
            low = middle
        else:
            high = middle
    return (low + high) / 2`,
  },
  {
    name: 'between_rows',
    text: `def between_rows(rows, at):
    """From a table with rising first column, by a straight line between two rows."""
    slack = 1e-9 * abs(at)
    for (low, low_value), (high, high_value) in zip(rows, rows[1:]):
        if low - slack <= at <= high + slack:
            return low_value + (high_value - low_value) * (at - low) / (high - low)
    raise ValueError("the table does not reach that far")`,
  },
  {
    name: 'at_row',
    text: `def at_row(rows, at):
    """From a table, at one of its rows."""
    for row, value in rows:
        if abs(row - at) <= 1e-9 * abs(at):
            return value
    raise ValueError("the table has no such row")`,
  },
];

/** Words that a name must not be: the language's own, the built-in functions used, and ours. */
export const pythonTaken: ReadonlySet<string> = new Set([
  ...`False None True and as assert async await break class continue def del elif else except finally for from global if
  import in is lambda nonlocal not or pass raise return try while with yield match case type
  abs max min sum map zip len int range print list tuple dict ValueError
  math DUST wheel wheels trial`.split(/\s+/),
  ...pythonHelpers.map((helper) => helper.name),
]);
