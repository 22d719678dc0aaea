const TURN = Math.PI / 12;
const RISE = 0.12;
const ZOOM = 0.86;

/**
 * Makes the element workable by keyboard and pointer.
 * @param {object} does what keys and taps lead to: turn, zoom, home, step, clear, tap(x, y in CSS px)
 * @returns {() => void} undoes it
 */
export function listen(canvas, does) {
  const keys = {
    ArrowLeft: () => does.turn(-TURN, 0),
    ArrowRight: () => does.turn(TURN, 0),
    ArrowUp: () => does.turn(0, RISE),
    ArrowDown: () => does.turn(0, -RISE),
    '+': () => does.zoom(ZOOM),
    '=': () => does.zoom(ZOOM),
    '-': () => does.zoom(1 / ZOOM),
    Home: () => does.home(),
    n: () => does.step(1),
    p: () => does.step(-1),
    Escape: () => does.clear(),
  };
  const stop = new AbortController();
  const on = (type, handle) => canvas.addEventListener(type, handle, {signal: stop.signal});
  on('keydown', (event) => {
    const act = keys[event.key.length === 1 ? event.key.toLowerCase() : event.key];
    if (act && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      act();
    }
  });
  let down = null;
  let fingers = 0;
  on('pointerdown', (event) => {
    fingers++;
    down = fingers === 1 ? {x: event.clientX, y: event.clientY, at: event.timeStamp} : null;
  });
  on('pointercancel', () => {
    fingers = Math.max(0, fingers - 1);
    down = null;
  });
  on('pointerup', (event) => {
    fingers = Math.max(0, fingers - 1);
    if (down && Math.hypot(event.clientX - down.x, event.clientY - down.y) < 8 && event.timeStamp - down.at < 600) {
      const box = canvas.getBoundingClientRect();
      does.tap(event.clientX - box.left, event.clientY - box.top);
    }
    down = null;
  });
  return () => stop.abort();
}
