// What a careful person would write by hand for this one page. The bench compares the site with it, and checks that both
// show the same numbers; nothing else uses it.

/** @typedef {readonly [x: number, y: number]} Point */

/** @param {string} id */
function byId(id) {
  const element = document.getElementById(id);
  if (!element) throw new Error(id);
  return element;
}

const form = /** @type {HTMLFormElement} */ (byId('calculator'));
const figure = byId('figure');

/** @type {Record<string, number>} */
const UNITS = {
  'rad/s': 1,
  rpm: Math.PI / 30,
  '°/s': Math.PI / 180,
  'turn/s': 2 * Math.PI,
  '': 1,
  '%': 0.01,
  'm/s': 1,
  'mm/s': 0.001,
  'cm/s': 0.01,
  'km/h': 1 / 3.6,
  'in/s': 0.0254,
  'ft/s': 0.3048,
  mph: 0.44704,
};

/** @param {string} name */
const field = (name) => /** @type {HTMLInputElement} */ (form.elements.namedItem(name));

/** @param {number} x */
const write = (x) => String(Math.abs(x) < 1e-12 ? 0 : Number(x.toPrecision(4))).replace('-', '−');

/** @param {number} x */
const held = (x) => (write(x).startsWith('−') ? `(${write(x)})` : write(x));

/** @param {number} x @param {string} name */
function inUnit(x, name) {
  const unit = field(name).value;
  return `${write(x / (UNITS[unit] ?? 1))}${unit === '' || unit === '°/s' ? unit : ` ${unit}`}`;
}

/** @param {Point} from @param {number} angle @param {number} by @returns {Point} */
const move = ([x, y], angle, by) => [x - Math.sin(angle) * by, y - Math.cos(angle) * by];

/** @param {Point} point */
const at = ([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`;

/** @param {Point} from @param {number} angle @param {number} length */
function arrow(from, angle, length, kind = '') {
  if (Math.abs(length) < 1) return `<circle class="head" cx="${from[0]}" cy="${from[1]}" r="2.5"/>`;
  const way = length < 0 ? angle + Math.PI : angle;
  const size = Math.min(9, Math.abs(length));
  const tip = move(from, angle, length);
  const back = move(tip, way, -size);
  const [left, right] = [1, -1].map((side) => move(back, way + Math.PI / 2, size * 0.4 * side));
  return (
    `<path class="shaft ${kind}" d="M${at(from)}L${at(back)}"/>` +
    `<path class="head" d="M${at(tip)}L${at(left ?? tip)}L${at(right ?? tip)}Z"/>`
  );
}

/** @param {number} Omega */
function turning(Omega) {
  if (Omega === 0) return '';
  const sense = Math.sign(Omega);
  const start = move([0, 0], sense * 0.6 + Math.PI / 2, 26);
  const angle = sense * 2.4 + Math.PI / 2;
  const end = move([0, 0], angle, 26);
  return (
    `<path class="shaft" d="M${at(start)}A26 26 0 0 ${sense > 0 ? 0 : 1} ${at(end)}"/>` +
    arrow(end, angle + (sense * Math.PI) / 2, 8)
  );
}

/** @param {number[]} angles @param {number[]} rims @param {number} v @param {number} theta @param {number} Omega */
function draw(angles, rims, v, theta, Omega) {
  const half = Math.min(0.36, Math.PI / angles.length - 0.06);
  const corners = angles.flatMap((a) => [a - half, a + half].map((b) => at(move([0, 0], b, 74 / Math.cos(half)))));
  const scale = 62 / Math.max(v, ...rims.map(Math.abs), 1e-9);
  const wheels = angles.map((angle, k) => {
    const label = move([0, 0], angle, 62);
    return (
      `<rect class="wheel" x="-20" y="-8.5" width="40" height="17" rx="7.73" ` +
      `transform="translate(${at(move([0, 0], angle, 84))}) rotate(${(-angle * 180) / Math.PI})"/>` +
      `<text class="label" x="${label[0]}" y="${label[1] + 4}">${k + 1}</text>`
    );
  });
  const name = move([0, 0], theta, 67);
  return (
    `<svg viewBox="-122 -122 244 244" width="244" height="244" aria-hidden="true">` +
    `<path class="body" d="M${corners.join('L')}Z"/><path class="nose" d="M0 -34L-7 -20L7 -20Z"/>${wheels.join('')}` +
    turning(Omega) +
    arrow([0, 0], theta, v > 0 ? 58 : 0, 'travel') +
    (v > 0 ? `<text class="symbol" x="${name[0]}" y="${name[1] + 4}">v</text>` : '') +
    angles.map((a, k) => arrow(move([0, 0], a, 97), a + Math.PI / 2, (rims[k] ?? 0) * scale)).join('') +
    '</svg>'
  );
}

function update() {
  const usable = form.checkValidity();
  form.classList.toggle('stale', !usable);
  byId('stale').hidden = usable;
  if (!usable) return;
  const number = (/** @type {string} */ name) => field(name).valueAsNumber;
  const [v, R, r] = [number('v'), number('R') / 1000, number('r') / 1000];
  const theta = (number('theta') * Math.PI) / 180;
  const Omega = (number('Omega') * Math.PI) / 180;
  const degrees = Array.from({ length: number('n') }, (_, k) => number('alpha') + (k * 360) / number('n'));
  const angles = degrees.map((a) => (a * Math.PI) / 180);
  const wheels = angles.map((angle, k) => {
    const share = Math.sin(theta - angle);
    const rim = v * share + R * Omega;
    return { k, share, rim, omega: rim / r, free: v * Math.cos(theta - angle) };
  });
  const top = Math.max(...wheels.map(({ omega }) => Math.abs(omega)));
  const rows = (/** @type {(wheel: (typeof wheels)[number]) => string} */ row) =>
    wheels.map((wheel) => `<p>wheel ${wheel.k + 1} = ${row(wheel)}</p>`).join('');

  byId('results').innerHTML = wheels
    .map(
      ({ k, omega, free }) =>
        `<tr><th scope="row">${k + 1}</th><td>${inUnit(omega, 'omega_unit')}</td>` +
        `<td>${inUnit(top > 0 ? omega / top : 0, 'share_unit')}</td><td>${inUnit(free, 'free_unit')}</td></tr>`,
    )
    .join('');
  byId('row-s').innerHTML = rows(
    ({ k, share }) => `sin(${write(number('theta'))}° − ${held(degrees[k] ?? 0)}°) = <b>${write(share)}</b>`,
  );
  byId('row-u').innerHTML = rows(
    ({ share, rim }) => `${write(v)} ⋅ ${held(share)} + ${write(R)} ⋅ ${held(Omega)} = <b>${write(rim)} m/s</b>`,
  );
  byId('row-omega').innerHTML = rows(
    ({ rim, omega }) =>
      `${write(rim)} / ${write(r)} = ${write(omega)} rad/s = <b>${write(omega / (UNITS['rpm'] ?? 1))} rpm</b>`,
  );
  const rims = wheels.map(({ rim }) => rim);
  figure.innerHTML = draw(angles, rims, v, theta, Omega);
  figure.ariaValueNow = String(Math.round(number('theta')));
  byId('travel').textContent = `${write(number('theta'))}°`;
  byId('rims').textContent = `${rims.map(write).join(', ')} m/s`;
  byId('caution').textContent = top > 0 ? '' : 'Nothing is asked of the wheels: give a speed or a yaw rate.';
}

/** @param {number} degrees */
function turnTo(degrees) {
  field('theta').value = String(degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees);
  update();
}

/** @param {PointerEvent} event */
function point(event) {
  const box = figure.getBoundingClientRect();
  const [left, up] = [box.left + box.width / 2 - event.clientX, box.top + box.height / 2 - event.clientY];
  if (Math.hypot(left, up) > 8) turnTo(Math.round((Math.atan2(left, up) * 180) / Math.PI));
}

form.addEventListener('input', update);
form.addEventListener('submit', (event) => event.preventDefault());
figure.addEventListener('pointerdown', (event) => {
  figure.setPointerCapture(event.pointerId);
  point(event);
});
figure.addEventListener('pointermove', (event) => {
  if (figure.hasPointerCapture(event.pointerId)) point(event);
});
figure.addEventListener('keydown', (event) => {
  const by = { ArrowLeft: 1, ArrowUp: 1, ArrowRight: -1, ArrowDown: -1 }[event.key];
  if (by === undefined) return;
  event.preventDefault();
  turnTo(Math.round(field('theta').valueAsNumber) + by * (event.shiftKey ? 15 : 1));
});
