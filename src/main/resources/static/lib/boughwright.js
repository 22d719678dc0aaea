import './file-drop.js';
import './kiosk.js';

// Vaadin's connection indicator holds text outside every landmark; as a status it is announced and allowed there.
document.querySelector('vaadin-connection-indicator')?.setAttribute('role', 'status');

/** A touch that wanders less than this, px, is a touch and not a drag. */
const WANDER = 6;
const trees = new WeakMap();

const parts = (picture, id) => id
    ? picture.querySelectorAll(`[data-piece="${CSS.escape(id)}"], [data-unit="${CSS.escape(id)}"]`) : [];

const tell = (picture, name, detail) => picture.dispatchEvent(new CustomEvent(name, { detail }));

/** The piece under a pointer: what is moved as one and what was touched. */
function touched(event) {
  const piece = event.target.closest?.('.stage-box .picture [data-piece]');
  if (!piece || piece.dataset.piece.startsWith('bulb-')) return null;
  const picture = piece.closest('.picture');
  return { picture, id: piece.dataset.unit || piece.dataset.piece, still: piece.hasAttribute('data-still') };
}

let drag = null;

document.addEventListener('pointerdown', event => {
  const found = event.button === 0 ? touched(event) : null;
  if (found) drag = { ...found, x: event.clientX, y: event.clientY, pointer: event.pointerId, moved: false };
});

document.addEventListener('pointermove', event => {
  if (!drag || event.pointerId !== drag.pointer) return;
  const dx = event.clientX - drag.x;
  const dy = event.clientY - drag.y;
  drag.moved ||= Math.hypot(dx, dy) > WANDER;
  if (drag.moved && !drag.still && drag.picture.hasAttribute('data-movable')) {
    event.preventDefault();
    const svg = drag.picture.querySelector('svg');
    const scale = 1 / svg.getScreenCTM().a;
    drag.right = dx * scale;
    drag.down = dy * scale;
    parts(drag.picture, drag.id).forEach(part => part.setAttribute('transform', `translate(${drag.right} ${drag.down})`));
  }
});

// Pictures are drawn in millimetres; the kiosk reckons in metres.
document.addEventListener('pointerup', event => {
  if (!drag || event.pointerId !== drag.pointer) return;
  const { picture, id, moved, right, down } = drag;
  drag = null;
  if (!moved) tell(picture, 'piece-picked', { id });
  else if (right !== undefined) {
    tell(picture, 'piece-picked', { id });
    tell(picture, 'piece-moved', { id, right: right / 1000, up: -down / 1000 });
  }
});

document.addEventListener('pointercancel', () => {
  if (drag) parts(drag.picture, drag.id).forEach(part => part.removeAttribute('transform'));
  drag = null;
});

// Arrows nudge what is picked while things are being moved.
document.addEventListener('keydown', event => {
  const way = { ArrowLeft: 'left', ArrowRight: 'right', ArrowUp: 'up', ArrowDown: 'down' }[event.key];
  const card = way && document.querySelector('.piece-card');
  const at = document.activeElement;
  if (card && (at === document.body || at.closest('.stage-box') && !at.matches('canvas'))) {
    const nudge = card.querySelector(`.nudge[data-way="${way}"]`);
    if (nudge) {
      event.preventDefault();
      nudge.click();
    }
  }
});

window.boughwright = {
  /** Marks a piece in the picture, flat or round. */
  pick(picture, id) {
    picture.querySelectorAll('.picked').forEach(part => part.classList.remove('picked'));
    parts(picture, id).forEach(part => part.classList.add('picked'));
    const tree = trees.get(picture);
    if (tree && tree.picked !== id) {
      tree.picked = id;
      tree.shown?.pick(id || null);
    }
  },

  /** Marks what clashes, by ids with spaces between. */
  clash(picture, ids) {
    ids.split(' ').forEach(id => parts(picture, id).forEach(part => part.classList.add('clashing')));
  },

  hide(picture, layers) {
    trees.get(picture)?.shown?.setHidden(layers.split(' ').filter(Boolean));
  },

  /** What the turning tree costs to draw; null while none is shown. */
  stats: picture => trees.get(picture)?.shown?.stats() ?? null,

  /** Lets go of the turning tree, if the picture shows one. */
  still(picture) {
    trees.get(picture)?.shown?.dispose();
    trees.delete(picture);
    picture.classList.remove('round');
  },

  /** Shows the tree to be turned, in place of the flat one as soon as it is there; tells of it when it cannot be had here. */
  async turn(picture, address, words, evening, layers) {
    const tree = { picked: '', shown: null };
    trees.set(picture, tree);
    picture.setAttribute('aria-busy', 'true');
    try {
      const [{ mount }, scene] = await Promise.all([import('./turn.js'), fetch(address, { cache: 'no-cache' }).then(answer => answer.json())]);
      if (trees.get(picture) !== tree) return;
      tree.shown = mount(picture, scene, JSON.parse(words), {
        evening, hidden: layers.split(' ').filter(Boolean),
        onPick: id => {
          tree.picked = id ?? '';
          tell(picture, 'piece-picked', { id: id ?? '' });
        },
        onLost: () => tell(picture, 'turn-unavailable', {}),
      });
      picture.classList.toggle('round', tree.shown !== null);
    } catch (problem) {
      console.warn(problem);
    } finally {
      picture.removeAttribute('aria-busy');
    }
    if (trees.get(picture) === tree && !tree.shown) tell(picture, 'turn-unavailable', {});
  },
};
