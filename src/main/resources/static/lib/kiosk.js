// The tablet that anyone may touch: the clock of an idle page and the wipe after it, a lost connection, the browser's history.
// What a page needs to know stands in the attribute data-kiosk of its screen, so that all of this works when the kiosk cannot be reached.

const root = new URL('..', import.meta.url);
/** A small file that anybody may fetch; asked for without cookies, so that it keeps no session alive. */
const probe = new URL('boughwright.svg', import.meta.url);

const PROBE_EVERY = 4000;
const PROBE_PATIENCE = 3000;
const TICK = 250;

let last = null;
/** What the screen that is shown says of itself; what the one before said while there is none. */
function page() {
  const said = document.querySelector('.screen[data-kiosk]')?.dataset.kiosk;
  if (said && said !== last?.said) last = { said, ...JSON.parse(said) };
  return last;
}

// ---- History: customers' pages replace one another, so that back and forward lead to nobody's plan.

const push = history.pushState.bind(history);
history.pushState = (state, title, address) => page()?.customer === false
    ? push(state, title, address) : history.replaceState(state, title, address);

// A page that the browser has kept whole is somebody's; the kiosk says anew what may be seen.
addEventListener('pageshow', event => {
  if (event.persisted) location.reload();
});

// ---- Windows opened from here, such as a plan to print, close with the wipe.

const opened = [];
document.addEventListener('click', event => {
  const link = event.target.closest?.('a[target="_blank"][href]');
  if (link && page()?.customer && link.origin === location.origin) {
    event.preventDefault();
    const other = open(link.href);
    if (other) opened.push(other);
  }
});

// ---- A finger that is put down twice, as some do, goes on once: the second touch would skip a question.

document.addEventListener('click', event => {
  if (event.detail > 1 && event.target.closest?.('.foot .button')) {
    event.preventDefault();
    event.stopImmediatePropagation();
  }
}, true);

// ---- Dialogues in our own words, made of plain elements.

function element(name, className, text) {
  const made = document.createElement(name);
  made.className = className;
  if (text !== undefined) made.textContent = text;
  return made;
}

function dialogue(className, title, role = 'dialog') {
  const box = element('dialog', `kiosk-box ${className}`);
  box.setAttribute('role', role);
  const head = element('h2', '', title);
  head.id = `${className}-head`;
  box.setAttribute('aria-labelledby', head.id);
  box.append(head);
  return box;
}

function button(text, kind, onClick) {
  const made = element('button', `button ${kind}`, text);
  made.type = 'button';
  made.addEventListener('click', onClick);
  return made;
}

function close(box) {
  box.close();
  box.remove();
}

// ---- The wipe.

let wiping = false;

const wait = milliseconds => new Promise(resolve => setTimeout(resolve, milliseconds));

async function reachable() {
  try {
    const answer = await fetch(probe, { method: 'HEAD', cache: 'no-store', credentials: 'omit', signal: AbortSignal.timeout(PROBE_PATIENCE) });
    return answer.ok;
  } catch {
    return false;
  }
}

/**
 * Everything of this customer leaves: the page at once; session and resume mark with the next request, which tells the kiosk by a cookie to
 * end them. Without a connection a plain page stands here until there is one.
 */
async function wipe() {
  if (wiping) return;
  wiping = true;
  const words = page()?.words ?? {};
  document.cookie = `boughwright-wiped=1; path=/; max-age=604800; SameSite=Strict${location.protocol === 'https:' ? '; Secure' : ''}`;
  opened.forEach(other => other.close());
  const afresh = element('main', 'kiosk-afresh');
  afresh.append(element('h1', '', words.afresh), element('p', '', words.afreshWords));
  document.body.replaceChildren(afresh);
  document.title = words.brand ?? '';
  history.replaceState(null, '', root);
  while (!await reachable()) await wait(1000);
  location.replace(root);
}

function askToFinish() {
  const { words, code } = page();
  const box = dialogue('kiosk-finish', words.finish);
  box.append(element('p', '', code ? words.finishCode.replace('{0}', code) : words.finishWords));
  const row = element('div', 'kiosk-row');
  row.append(button(words.notYet, 'quiet', () => close(box)), button(words.clear, 'strong', wipe));
  box.append(row);
  box.addEventListener('close', () => box.remove());
  document.body.append(box);
  box.showModal();
}

document.addEventListener('click', event => {
  if (event.target.closest?.('[data-finish]')) askToFinish();
});

// ---- The idle clock.

let touchedAt = performance.now();
let warning = null;

function touched() {
  touchedAt = performance.now();
  if (warning) {
    close(warning.box);
    warning = null;
  }
}

for (const sign of ['pointerdown', 'pointermove', 'keydown', 'wheel', 'input', 'touchstart']) {
  // A mouse that lies still is reported as moving now and then.
  addEventListener(sign, event => {
    if (sign !== 'pointermove' || event.movementX || event.movementY || event.pointerType !== 'mouse') touched();
  }, { capture: true, passive: true });
}

function warn() {
  const { words, code } = page();
  const box = dialogue('kiosk-idle', words.idle, 'alertdialog');
  const left = element('p', 'kiosk-left');
  left.setAttribute('aria-hidden', 'true');
  const text = element('p', '');
  text.id = 'kiosk-idle-words';
  text.setAttribute('role', 'status');
  box.setAttribute('aria-describedby', text.id);
  const row = element('div', 'kiosk-row');
  const stay = button(words.stay, 'strong', touched);
  row.append(button(words.clear, 'quiet', wipe), stay);
  box.append(left, text);
  if (code) box.append(element('p', 'soft', words.idleCode.replace('{0}', code)));
  box.append(row);
  box.addEventListener('cancel', touched);
  document.body.append(box);
  box.showModal();
  stay.focus();
  warning = { box, left, text, said: null };
}

/** Shows the seconds, and says them at the beginning, half-way and at five. */
function count(seconds, all) {
  warning.left.textContent = String(seconds);
  const said = [all, Math.ceil(all / 2), 5].filter(step => step >= seconds).at(-1);
  if (said !== warning.said) {
    warning.said = said;
    warning.text.textContent = page().words.idleWords.replace('{0}', String(seconds));
  }
}

setInterval(() => {
  const now = page();
  if (wiping || !now?.customer || now.rest) {
    if (!wiping) touched();
    return;
  }
  const idle = (performance.now() - touchedAt) / 1000;
  const seconds = Math.ceil(now.idle + now.warning - idle);
  if (seconds <= 0) wipe();
  else if (idle >= now.idle) {
    if (!warning) warn();
    count(seconds, now.warning);
  }
}, TICK);

// ---- A lost connection.

let lost = null;
let missed = 0;

const state = () => window.Vaadin?.connectionState;
const broken = () => state()?.state === 'reconnecting' || state()?.state === 'connection-lost' || missed > 1 || !navigator.onLine;

function showLost() {
  const words = page()?.words;
  if (lost || wiping || !words) return;
  lost = dialogue('kiosk-lost', words.lost, 'alertdialog');
  const text = element('p', '', words.lostWords);
  text.id = 'kiosk-lost-words';
  lost.setAttribute('aria-describedby', text.id);
  const sign = element('div', 'kiosk-waiting');
  sign.append(element('span', ''), element('span', ''), element('span', ''));
  lost.append(text, sign);
  lost.tabIndex = -1;
  lost.addEventListener('cancel', event => event.preventDefault());
  document.body.append(lost);
  lost.showModal();
  lost.focus();
  recover();
}

/** Until the kiosk answers again: first anything at all, then this very page, which is drawn anew when its session is gone. */
async function recover() {
  while (lost && !wiping) {
    if (await reachable()) {
      missed = 0;
      const screen = document.querySelector('.screen');
      const there = screen?.$server?.stillThere;
      if (!there) break;
      try {
        if (await Promise.race([there.call(screen.$server).then(() => true), wait(5000).then(() => false)]) && !broken()) break;
      } catch {
        // The answer was refused; the page is drawn anew by what Vaadin does about it.
      }
    }
    await wait(500);
  }
  if (lost) {
    close(lost);
    lost = null;
    touched();
  }
}

function look() {
  if (broken()) showLost();
}

setInterval(async () => {
  if (wiping || lost || document.hidden || !page()) return;
  missed = await reachable() ? 0 : missed + 1;
  // Once more at once: a single miss may be chance.
  if (missed === 1) missed = await reachable() ? 0 : 2;
  look();
}, PROBE_EVERY);
addEventListener('offline', look);

// Who reads and scrolls for long is still there: their session does not end for want of answers.
const STILL_EVERY = 120000;
setInterval(() => {
  const screen = document.querySelector('.screen');
  if (!wiping && !lost && page()?.customer && !page().rest && performance.now() - touchedAt < STILL_EVERY) screen?.$server?.stillThere?.().catch?.(() => { });
}, STILL_EVERY);

const listening = setInterval(() => {
  if (state()?.addStateChangeListener) {
    clearInterval(listening);
    state().addStateChangeListener(look);
  }
}, 100);

// ---- Full screen, where the browser offers it.

document.addEventListener('click', event => {
  if (event.target.closest?.('[data-full-screen]')) {
    if (document.fullscreenElement) document.exitFullscreen();
    else document.documentElement.requestFullscreen({ navigationUI: 'hide' }).catch(() => { });
  }
});
document.documentElement.classList.toggle('can-fill', document.fullscreenEnabled && !matchMedia('(display-mode: fullscreen)').matches);

// ---- The trees of the inviting page follow one another where motion is welcome.

const CHANGE_EVERY = 14000;
setInterval(() => {
  const trees = [...document.querySelectorAll('.invite-tree')];
  if (trees.length < 2 || document.hidden || matchMedia('(prefers-reduced-motion: reduce)').matches) return;
  const at = trees.findIndex(tree => tree.classList.contains('shown'));
  const next = trees[(at + 1) % trees.length];
  const show = () => {
    trees.forEach(tree => tree.classList.toggle('shown', tree === next));
    next.closest('.invite-stage').querySelector('.invite-look').textContent = next.dataset.look;
  };
  if (!next.src) next.src = next.dataset.src;
  next.decode().then(show, () => { });
}, CHANGE_EVERY);

// ---- The keyboard's place. An answer draws its page anew; whoever goes by keys, or is read to, stays where they were, and hears the new
// heading when the page has become another one.

const FOCUSABLE = 'button, a[href], input, select, textarea, summary, [tabindex]';
let place = null;

function signature(at) {
  return at.id ? `#${at.id}` : `${at.tagName} ${at.getAttribute('aria-label') ?? at.textContent.trim()}`;
}

const alike = sign => sign.startsWith('#') ? [document.getElementById(sign.slice(1))].filter(Boolean)
    : [...document.querySelectorAll(FOCUSABLE)].filter(other => signature(other) === sign);

document.addEventListener('focusin', event => {
  const at = event.target;
  if (!at.closest?.('.screen') || at.closest('.house')) {
    place = null;
    return;
  }
  const sign = signature(at);
  place = { at, sign, nth: Math.max(0, alike(sign).indexOf(at)), classes: at.className, heading: document.querySelector('.screen h1')?.textContent };
});

new MutationObserver(records => {
  if (!place || wiping || document.querySelector('dialog:modal')) return;
  const heading = document.querySelector('.screen h1');
  const here = document.activeElement;
  if (!heading || here !== document.body && here !== place.at) return;
  const another = heading.textContent !== place.heading;
  // Put back where it was, a button has lost its place all the same.
  const moved = records.some(record => [...record.removedNodes].some(gone => gone === place.at || gone.contains(place.at)));
  if (!another && place.at.isConnected) {
    if (moved && here === document.body) place.at.focus({ preventScroll: true });
    return;
  }
  const found = alike(place.sign);
  const again = another ? null : found[place.nth] ?? found[0];
  if (again) {
    again.focus({ preventScroll: true });
    return;
  }
  // Another page, or what was touched is gone, as a piece that was taken out.
  place = null;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
}).observe(document.body, { childList: true, subtree: true, characterData: true });
