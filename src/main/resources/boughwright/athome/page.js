// One step of the plan at a time. How far one has come is kept on this phone alone, under the plan's code.
(() => {
  const plan = JSON.parse(document.getElementById('plan').textContent);
  const page = document.getElementById('page');
  const key = 'at-home-' + plan.code;
  const word = (name, ...values) => values.reduce((text, value, i) => text.replaceAll(`{${i}}`, value), plan.words[name]);
  const views = [...document.querySelectorAll('template[data-view]')].map(t => t.dataset.view);
  const stepOf = new Map();
  plan.steps.forEach((step, i) => step.placed.forEach(id => stepOf.set(id, i)));
  const lights = plan.steps.findIndex(step => step.lights);

  // Steps are known by their titles and places by their words, so that what was ticked holds when the plan has changed since.
  let state = { at: -1, done: [], ticks: {}, view: views[0] };
  try {
    state = { ...state, ...JSON.parse(localStorage.getItem(key) ?? '{}') };
  } catch { /* A phone that keeps nothing still shows the plan. */ }
  if (!views.includes(state.view)) state.view = views[0];
  const titles = plan.steps.map(step => step.title);
  state.done = state.done.filter(title => titles.includes(title));
  state.at = Math.max(-1, Math.min(plan.steps.length, state.at));
  const isDone = at => state.done.includes(titles[at]);

  const keep = () => {
    try { localStorage.setItem(key, JSON.stringify(state)); } catch { /* as above */ }
  };

  const make = (tag, attributes = {}, ...children) => {
    const element = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes)) {
      if (name.startsWith('on')) element.addEventListener(name.slice(2), value);
      else if (value !== false && value != null) element.setAttribute(name, value === true ? '' : value);
    }
    element.append(...children.filter(child => child != null));
    return element;
  };

  const drawn = markup => {
    const template = document.createElement('template');
    template.innerHTML = markup;
    return template.content;
  };

  const minutesLeft = () => plan.steps.reduce((sum, step, i) => sum + (isDone(i) ? 0 : step.minutes), 0);
  const duration = minutes => minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;

  const left = () => minutesLeft() > 0 ? word('minutes-left', duration(minutesLeft())) : word('none-left');

  const stateOf = (element, at) => {
    const id = element.dataset.piece;
    const step = id.startsWith('bulb-') ? (lights < 0 ? -1 : lights) : stepOf.get(id) ?? -1;
    return step < at ? 'up' : step === at ? 'now' : 'later';
  };

  const picture = at => {
    const box = make('div', { class: at < plan.steps.length && at >= 0 ? 'picture step' : 'picture' });
    const show = () => {
      box.replaceChildren(document.querySelector(`template[data-view="${state.view}"]`).content.cloneNode(true));
      let now = 0;
      box.querySelectorAll('[data-piece]').forEach(element => {
        element.dataset.state = at < 0 ? 'up' : stateOf(element, at);
        now += element.dataset.state === 'now';
      });
      box.classList.toggle('many', now > 60);
      box.classList.remove('alone');
    };
    show();
    const drawing = {
      box,
      turned: () => {},
      turnTo: view => {
        state.view = view;
        keep();
        show();
        drawing.turned();
      },
    };
    return drawing;
  };

  const find = (root, ids) => [...root.querySelectorAll('[data-piece]')].filter(e => ids.includes(e.dataset.piece));

  /** Shows these pieces by themselves, from a side that sees them; asked again, shows all of the step. */
  const alone = ({ box, turnTo }, ids) => {
    const again = ids.some(id => box.querySelector(`.alone[data-piece="${CSS.escape(id)}"]`));
    if (!again && !find(box, ids).length) {
      const view = views.find(each => find(document.querySelector(`template[data-view="${each}"]`).content, ids).length);
      if (view) turnTo(view);
    }
    box.querySelectorAll('.alone').forEach(element => element.classList.remove('alone'));
    const these = again ? [] : find(box, ids);
    these.forEach(element => element.classList.add('alone'));
    box.classList.toggle('alone', these.length > 0);
    box.scrollIntoView({ block: 'start' });
  };

  const sides = drawing => {
    if (views.length < 2) return null;
    const row = make('div', { class: 'pills', role: 'group', 'aria-label': word('view') }, ...views.map(view =>
        make('button', { type: 'button', 'data-side': view, onclick: () => drawing.turnTo(view) }, word(view === 'back' ? 'back-side' : view))));
    const press = () => row.querySelectorAll('button').forEach(b => b.setAttribute('aria-pressed', String(b.dataset.side === state.view)));
    drawing.turned = press;
    press();
    return row;
  };

  const arrive = at => {
    state.at = at;
    keep();
    draw();
    scrollTo(0, 0);
    page.querySelector('h1')?.focus();
  };

  // Each step is a place to go back to by the phone's own key.
  const go = at => {
    history.pushState({ at }, '');
    arrive(at);
  };
  addEventListener('popstate', event => arrive(event.state?.at ?? -1));

  const footer = (...buttons) => make('footer', {}, make('div', {}, ...buttons));

  const bar = () => make('progress', { max: plan.steps.length, value: state.done.length, 'aria-label': word('progress') });

  const howTo = step => step.howTo.map(name => make('details', {},
      make('summary', {}, plan.howTo[name].title),
      document.querySelector(`template[data-howto="${name}"]`).content.cloneNode(true),
      make('p', {}, plan.howTo[name].text)));

  const places = (step, drawing) => make('ol', { class: 'where' }, ...step.places.map((place, i) => {
    const ticked = () => state.ticks[step.title] ?? [];
    const row = make('li', { class: ticked().includes(place) ? 'done' : false });
    row.append(make('label', {}, make('input', {
      type: 'checkbox', checked: ticked().includes(place),
      onchange: event => {
        const now = new Set(ticked());
        if (event.target.checked) now.add(place); else now.delete(place);
        state.ticks[step.title] = [...now];
        row.classList.toggle('done', event.target.checked);
        keep();
      },
    }), make('span', {}, place)));
    if (step.at[i]?.length) {
      row.append(make('button', { type: 'button', class: 'show', onclick: () => alone(drawing, step.at[i]) }, word('shown-alone')));
    }
    return row;
  }));

  const drawStep = at => {
    const step = plan.steps[at];
    const drawing = picture(at);
    const done = isDone(at);
    page.replaceChildren(...[
      make('p', { class: 'count' }, make('span', {}, word('step-of', at + 1, plan.steps.length)), make('span', {}, left())),
      make('h1', { tabindex: '-1' }, step.title),
      bar(),
      drawing.box,
      sides(drawing),
      make('p', {}, step.text),
      ...(step.pieces.length ? [make('h2', {}, word('take')), make('ul', { class: 'take' }, ...step.pieces.map(piece =>
          make('li', {}, drawn(piece.picture), make('b', {}, `${piece.quantity} ×`), make('span', {}, piece.name))))] : []),
      ...(step.howTo.length ? [make('h2', {}, word('how')), ...howTo(step)] : []),
      ...(step.places.length ? [make('h2', {}, word('where')), places(step, drawing)] : []),
      done ? make('div', { class: 'tools' }, make('button', {
        type: 'button',
        onclick: () => {
          state.done = state.done.filter(title => title !== step.title);
          arrive(at);
        },
      }, word('undone'))) : null,
      footer(make('button', { type: 'button', onclick: () => go(at - 1) }, word('back')),
          make('button', {
            type: 'button', class: 'strong',
            onclick: () => {
              if (!done) state.done.push(step.title);
              go(at + 1);
            },
          }, word(done ? 'on' : 'done'))),
    ].filter(Boolean));
  };

  const tools = () => {
    const copy = make('a', { class: 'button', download: `${plan.code}.html`, href: location.pathname + '?copy' }, word('save'));
    const row = make('div', { class: 'tools' }, location.protocol.startsWith('http') ? copy : null);
    if ('wakeLock' in navigator) {
      row.append(make('button', { type: 'button', 'aria-pressed': String(lit !== null), onclick: async event => {
        await stayLit(lit === null);
        event.target.setAttribute('aria-pressed', String(lit !== null));
      } }, word('keep-lit')));
    }
    return row;
  };

  const drawStart = () => {
    const drawing = picture(-1);
    page.replaceChildren(...[
      make('h1', { tabindex: '-1' }, document.title.split(' · ')[0]),
      make('p', { class: 'soft' }, left()),
      drawing.box, sides(drawing), tools(),
      make('p', {}, plan.ladder),
      ...(plan.cautions.length ? [make('h2', {}, word('care')), make('ul', { class: 'care' }, ...plan.cautions.map(text => make('li', {}, text)))] : []),
      footer(make('button', { type: 'button', class: 'strong', onclick: () => go(next()) }, word(state.done.length ? 'again' : 'start'))),
    ].filter(Boolean));
  };

  const drawEnd = () => {
    const drawing = picture(plan.steps.length);
    page.replaceChildren(...[
      make('h1', { tabindex: '-1' }, word('all-done')), make('p', {}, word('all-done.text')), bar(), drawing.box, sides(drawing),
      footer(make('button', { type: 'button', onclick: () => go(plan.steps.length - 1) }, word('back'))),
    ].filter(Boolean));
  };

  const next = () => {
    const open = plan.steps.findIndex((_, i) => !isDone(i));
    return open < 0 ? plan.steps.length : open;
  };

  const draw = () => state.at < 0 ? drawStart() : state.at >= plan.steps.length ? drawEnd() : drawStep(state.at);

  // The screen stays lit while hands are full; the lock falls when the page is hidden and is taken again when it is back.
  let lit = null;
  let wanted = false;
  const stayLit = async on => {
    wanted = on;
    if (on) {
      try { lit = await navigator.wakeLock.request('screen'); } catch { lit = null; }
    } else {
      await lit?.release();
      lit = null;
    }
  };
  document.addEventListener('visibilitychange', () => { if (wanted && document.visibilityState === 'visible') stayLit(true); });

  history.replaceState({ at: state.at }, '');
  draw();

  // Only pages over a secure connection may keep themselves for later; a saved copy needs no keeping.
  if ('serviceWorker' in navigator && location.protocol.startsWith('http')) {
    navigator.serviceWorker.register('worker.js').catch(() => { /* the open page goes on without */ });
  }
})();
