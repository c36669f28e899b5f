/** What the benchmark puts into the page before its first script: marks of what was moved, asked and painted. */

/**
 * A picture is painted for a move when it is of an overlap that was asked for after that move. Run in the page, with
 * nothing from around it.
 */
export function watchMoves() {
  const state = { moves: [], painted: [], asked: 0, margins: [], waiting: 0, on: false };
  Object.assign(window, { benchMoves: state });
  /** Moves that the newest answer knows of, and those that a picture was painted for. */
  let known = 0;
  let shown = 0;
  let waits = false;
  // The same move, told when it happens and not with the next frame.
  const kind = 'onpointerrawupdate' in window ? 'pointerrawupdate' : 'pointermove';
  window.addEventListener(
    kind,
    ({ timeStamp }) => {
      if (state.on) state.moves.push(timeStamp);
    },
    { capture: true },
  );
  const plainFetch = window.fetch;
  window.fetch = async (address, ...rest) => {
    const isPicture = state.on && /\/ask\/joint\.(analyse|stress)$/.test(String(address));
    const before = state.moves.length;
    if (isPicture) state.asked += 1;
    // The margins of whatever is asked come with it.
    const isWhole = state.on && /\/ask\/joint\.analyse$/.test(String(address));
    if (isWhole) state.waiting += 1;
    const response = await plainFetch(address, ...rest);
    if (isWhole) {
      state.waiting -= 1;
      state.margins.push(performance.now());
    }
    if (!isPicture) return response;
    const read = response.json.bind(response);
    response.json = async () => {
      const value = await read();
      known = Math.max(known, before);
      return value;
    };
    return response;
  };
  // The first thing that is done to a picture when it is painted anew.
  const plainClear = CanvasRenderingContext2D.prototype.clearRect;
  CanvasRenderingContext2D.prototype.clearRect = function clear(...box) {
    const isStress = () => /^(Shear|Peel) along/.test(this.canvas.getAttribute('aria-label') ?? '');
    if (state.on && known > shown && !waits && isStress()) {
      waits = true;
      const now = known;
      const channel = new MessageChannel();
      // Comes once the frame has been handed on.
      channel.port1.onmessage = () => {
        waits = false;
        const at = performance.now();
        for (; shown < now; shown++) state.painted[shown] = at - state.moves[shown];
      };
      channel.port2.postMessage(null);
    }
    return plainClear.apply(this, box);
  };
}

/** From each key to the end of the frame that shows it. */
export function watchKeys() {
  const times = [];
  Object.assign(window, { benchKeys: times });
  window.addEventListener('keydown', ({ timeStamp }) => {
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => times.push(performance.now() - timeStamp);
      channel.port2.postMessage(null);
    });
  });
}

/** When the first margin stood on the screen, and the last of the project's; in milliseconds since 1970. */
export function watchFirstMargin() {
  const origin = performance.timeOrigin;
  Object.assign(window, { benchFirst: null, benchAll: null });
  const waiting = [
    ['benchFirst', () => document.querySelector('tbody.joint .lowest .value')?.textContent?.trim()],
    // What stands of all joints together comes with the last of them.
    ['benchAll', () => document.querySelector('.tally')?.textContent?.includes('Low is below')],
  ];
  const look = () => {
    while (waiting[0]?.[1]()) {
      const [name] = waiting.shift();
      const channel = new MessageChannel();
      channel.port1.onmessage = () => {
        window[name] = origin + performance.now();
      };
      channel.port2.postMessage(null);
    }
    if (waiting.length > 0) requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}
