const REST = 140;
/** A frame of a turn should take no longer, ms; one that takes less may grow finer. */
const SLOW = 31;
const QUICK = 18;
const LEAST = 0.38;
const FINEST = 2;
/** A full picture that takes longer than this, ms, is too slow to turn. */
const TOO_SLOW = 60;
/** How many shifted pictures the resting one is averaged from, and how long that may take, ms. */
const SAMPLES = 8;
const PATIENCE = 5000;

/**
 * Draws frames only while something moves and the element can be seen, and makes the picture finer when it rests. While
 * it moves the pixel ratio follows what the machine can do, and a machine that is far too slow is asked for a rough one.
 */
export class Loop {
  frames = 0;
  #does;
  #gl;
  #asked = 0;
  #rest = 0;
  #last = 0;
  #pace = 0;
  #steady = 0;
  #full = Math.min(FINEST, window.devicePixelRatio || 1);
  #ratio = Math.min(FINEST, window.devicePixelRatio || 1);
  #ceiling = this.#full * 1.5;
  #rough = null;
  #sample = SAMPLES;
  #spent = 0;
  #shown = false;
  #stopped = false;
  #watch;

  /**
   * @param {HTMLElement} element whose visibility counts
   * @param {WebGL2RenderingContext} gl tells when a picture is done
   * @param {object} does draw(time, {ratio, rough}) draws a frame and tells whether another is due; refine(sample, ratio)
   *   draws one of the pictures that the resting one is averaged from
   */
  constructor(element, gl, does) {
    this.#does = does;
    this.#gl = gl;
    this.#watch = new IntersectionObserver((entries) => {
      this.#shown = entries.at(-1).isIntersecting;
      this.refresh();
    });
    this.#watch.observe(element);
    document.addEventListener('visibilitychange', this.#wake);
  }

  get framesPerSecond() {
    return this.#pace ? Math.round(1000 / this.#pace) : 0;
  }

  get pixelRatio() {
    return this.#ratio;
  }

  get rough() {
    return Boolean(this.#rough);
  }

  /** Something moves: asks for a frame. */
  ask() {
    clearTimeout(this.#rest);
    this.#sample = SAMPLES;
    if (this.#rough === null) {
      this.refresh();
    } else if (!this.#asked && this.#able()) {
      this.#asked = requestAnimationFrame(this.#frame);
    }
  }

  /** Something changed but nothing moves: asks for the resting picture. */
  refresh() {
    if (!this.#asked) {
      this.#settle(0);
    }
  }

  dispose() {
    this.#stopped = true;
    cancelAnimationFrame(this.#asked);
    clearTimeout(this.#rest);
    this.#watch.disconnect();
    document.removeEventListener('visibilitychange', this.#wake);
  }

  #able() {
    return this.#shown && !this.#stopped && !document.hidden;
  }

  #wake = () => this.refresh();

  #frame = (time) => {
    this.#asked = 0;
    if (this.#last) {
      this.#measure(time - this.#last);
    }
    this.#last = time;
    this.frames++;
    const more = this.#does.draw(time, {ratio: this.#ratio, rough: this.#rough});
    if (more) {
      this.ask();
    } else {
      this.#settle(REST);
    }
  };

  #settle(wait) {
    clearTimeout(this.#rest);
    this.#last = 0;
    this.#sample = 0;
    this.#spent = 0;
    this.#rest = setTimeout(this.#refine, wait);
  }

  /** One more of the pictures that make the resting one; the next waits until this one is done. */
  #refine = () => {
    if (this.#asked || !this.#able() || this.#sample >= SAMPLES) {
      return;
    }
    const start = performance.now();
    this.frames++;
    this.#does.refine(this.#sample, this.#full);
    this.#done(this.#gl.fenceSync(this.#gl.SYNC_GPU_COMMANDS_COMPLETE, 0), () => {
      const took = performance.now() - start;
      const first = this.#rough === null;
      if (this.#sample === 1 || first) {
        this.#rough = took > TOO_SLOW;
      }
      this.#sample++;
      // The first picture of all also pays for the shaders, which will not come again.
      this.#spent += first ? 0 : took;
      if (first || this.#spent + took < PATIENCE) {
        this.#rest = setTimeout(this.#refine, 0);
      }
    });
    this.#gl.flush();
  };

  #done(fence, then) {
    const asked = this.#sample;
    const look = () => {
      const state = this.#gl.isContextLost() ? this.#gl.SIGNALED : this.#gl.getSyncParameter(fence, this.#gl.SYNC_STATUS);
      if (state !== this.#gl.SIGNALED) {
        setTimeout(look, 4);
        return;
      }
      this.#gl.deleteSync(fence);
      if (asked === this.#sample) {
        then();
      }
    };
    setTimeout(look, 0);
  }

  #measure(took) {
    const step = Math.min(took, 300);
    this.#pace = this.#pace ? this.#pace + (step - this.#pace) * 0.15 : step;
    this.#steady++;
    if (this.#steady < 5) {
      return;
    }
    if (this.#pace > SLOW && this.#ratio > LEAST) {
      this.#ceiling = Math.max(LEAST, this.#ratio * 0.95);
      this.#step(this.#ratio * Math.max(0.5, Math.sqrt(SLOW * 0.9 / this.#pace)));
    } else if (this.#pace < QUICK && this.#ratio < this.#ceiling && this.#steady > 40) {
      this.#step(Math.min(this.#ceiling, this.#ratio * 1.15));
    }
  }

  #step(ratio) {
    this.#ratio = Math.max(LEAST, ratio);
    this.#steady = 0;
  }
}
