// Sends a file that was dropped or chosen to the place that the kiosk named for it.

/** A picture is sent again at this quality, 0..1. */
const QUALITY = 0.85;
const sending = new WeakMap();

const say = (drop, words, wrong) => {
  const said = drop.querySelector('.file-drop-said');
  said.textContent = words;
  said.classList.toggle('fault', Boolean(wrong));
};

const fill = (words, name) => words.replace('{name}', name);

/** Whether HTML's accept lets the file pass: by ending or by media type. */
function accepted(file, accept) {
  return accept.split(',').map(kind => kind.trim().toLowerCase()).filter(Boolean).some(kind =>
    kind.startsWith('.') ? file.name.toLowerCase().endsWith(kind)
      : kind.endsWith('/*') ? file.type.startsWith(kind.slice(0, -1)) : file.type === kind);
}

/** The picture made smaller and upright; the file itself where the browser cannot read it. What may see through stays PNG. */
async function shrunk(file, longest) {
  if (!file.type.startsWith('image/')) return file;
  try {
    const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
    const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(picture.width * scale));
    canvas.height = Math.max(1, Math.round(picture.height * scale));
    const pen = canvas.getContext('2d');
    pen.imageSmoothingQuality = 'high';
    pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    const type = /png|gif|webp|avif|svg/.test(file.type) ? 'image/png' : 'image/jpeg';
    const blob = await new Promise(done => canvas.toBlob(done, type, QUALITY));
    return blob ? new File([blob], file.name, { type }) : file;
  } catch {
    return file;
  }
}

async function send(drop, files) {
  if (sending.has(drop)) return;
  const inputs = drop.querySelectorAll('input[type="file"]');
  const accept = drop.querySelector(':scope > input').accept;
  const file = files[0];
  if (!file) return;
  if (files.length > 1) return say(drop, drop.dataset.several, true);
  if (accept && !accepted(file, accept)) return say(drop, fill(drop.dataset.otherKind, file.name), true);

  const going = drop.querySelector('.file-drop-going');
  const bar = going.querySelector('progress');
  const request = new XMLHttpRequest();
  let stopped = false;
  sending.set(drop, {
    stop() {
      stopped = true;
      request.abort();
      drop.$server.stopped();
    },
  });
  bar.removeAttribute('value');
  going.hidden = false;
  inputs.forEach(input => { input.disabled = true; });
  say(drop, fill(drop.dataset.sending, file.name));
  let words = drop.dataset.broken;
  let wrong = true;
  try {
    const body = drop.dataset.shrink ? await shrunk(file, Number(drop.dataset.shrink)) : file;
    if (body.size > Number(drop.dataset.most)) {
      words = drop.dataset.tooLarge;
    } else if (!stopped) {
      const status = await new Promise(done => {
        request.upload.onprogress = event => {
          if (event.lengthComputable) bar.value = event.loaded / event.total;
        };
        request.upload.onload = () => {
          bar.removeAttribute('value');
          say(drop, fill(drop.dataset.reading, file.name));
        };
        request.onload = () => done(request.status);
        request.onerror = request.onabort = () => done(0);
        request.open('POST', new URL(drop.getAttribute('data-to'), document.baseURI));
        request.setRequestHeader('Content-Type', 'application/octet-stream');
        request.setRequestHeader('X-File-Name', encodeURIComponent(file.name));
        request.setRequestHeader('X-File-Type', body.type);
        request.send(body);
      });
      // What the kiosk has found out comes with its answer to this.
      const refused = stopped ? '' : await drop.$server.ended();
      wrong = status !== 200 || Boolean(refused);
      words = wrong ? refused || words : fill(drop.dataset.arrived, file.name);
    }
  } catch (problem) {
    console.warn(problem);
  }
  if (stopped) {
    words = fill(drop.dataset.stopped, file.name);
    wrong = false;
  }
  const held = going.contains(document.activeElement);
  going.hidden = true;
  inputs.forEach(input => {
    input.disabled = false;
    // The same file may be chosen again.
    input.value = '';
  });
  sending.delete(drop);
  say(drop, words, wrong);
  if (held) drop.querySelector(':scope > input').focus();
}

const under = event => event.target.closest?.('.file-drop');

document.addEventListener('change', event => {
  const drop = event.target.matches?.('.file-drop input[type="file"]') && under(event);
  if (drop) send(drop, event.target.files);
});

document.addEventListener('click', event => {
  if (event.target.closest?.('.file-drop-cancel')) sending.get(under(event))?.stop();
});

// A file that misses the place would take the browser off the page.
for (const kind of ['dragover', 'drop']) {
  document.addEventListener(kind, event => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    const drop = under(event);
    if (kind === 'dragover') event.dataTransfer.dropEffect = drop ? 'copy' : 'none';
    document.querySelectorAll('.file-drop.over').forEach(other => other.classList.remove('over'));
    if (drop) drop.classList.toggle('over', kind === 'dragover');
    if (kind === 'drop' && drop) send(drop, event.dataTransfer.files);
  });
}

document.addEventListener('dragleave', event => {
  const drop = under(event);
  if (drop && !drop.contains(event.relatedTarget)) drop.classList.remove('over');
});
