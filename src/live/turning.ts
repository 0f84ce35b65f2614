/** The same direction between −180 and 180: a reader may type 270°. */
export const withinHalfTurn = (degrees: number): number =>
  Math.abs(degrees) <= 180 ? degrees : degrees - 360 * Math.round(degrees / 360);

/** Lets the reader turn an angle in a figure, by dragging or with the arrow keys. Straight ahead is up; left is positive. */
export class Turning {
  readonly #handle: HTMLElement;
  readonly #turned: (degrees: number) => void;

  /** @param turned called with whole degrees from −180 to 180. */
  constructor(handle: HTMLElement, signal: AbortSignal, turned: (degrees: number) => void) {
    this.#handle = handle;
    this.#turned = turned;
    handle.tabIndex = 0;
    handle.setAttribute('role', 'slider');
    handle.addEventListener('pointerdown', (event) => this.#grab(event), { signal });
    handle.addEventListener('pointermove', (event) => this.#drag(event), { signal });
    handle.addEventListener('keydown', (event) => this.#key(event), { signal });
  }

  /** Tells assistive technology the angle. */
  show(degrees: number): void {
    const whole = withinHalfTurn(Math.round(degrees));
    this.#handle.setAttribute('aria-valuenow', String(whole));
    this.#handle.setAttribute('aria-valuetext', `${whole} degrees`);
  }

  #grab(event: PointerEvent): void {
    if (event.button !== 0) return;
    event.preventDefault();
    this.#handle.setPointerCapture(event.pointerId);
    this.#handle.focus({ preventScroll: true });
    this.#point(event);
  }

  #drag(event: PointerEvent): void {
    if (this.#handle.hasPointerCapture(event.pointerId)) this.#point(event);
  }

  #point(event: PointerEvent): void {
    const box = this.#handle.getBoundingClientRect();
    const left = box.left + box.width / 2 - event.clientX;
    const up = box.top + box.height / 2 - event.clientY;
    if (Math.hypot(left, up) < 8) return;
    this.#turned(Math.round((Math.atan2(left, up) * 180) / Math.PI));
  }

  #key(event: KeyboardEvent): void {
    const now = Number(this.#handle.getAttribute('aria-valuenow'));
    const size = event.shiftKey ? 15 : 1;
    const next: Partial<Record<string, number>> = {
      ArrowLeft: now + size,
      ArrowUp: now + size,
      ArrowRight: now - size,
      ArrowDown: now - size,
      PageUp: now + 30,
      PageDown: now - 30,
      Home: 0,
      End: 180,
    };
    const angle = next[event.key];
    if (angle === undefined) return;
    event.preventDefault();
    this.#turned(withinHalfTurn(angle));
  }
}
