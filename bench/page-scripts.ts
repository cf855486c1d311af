/** Scripts that run inside the page; as text, since this room knows no DOM. */

/** Puts into `keyTimes` the time from each key to the frame after the last change that it brought to what is seen in the window. */
export const MEASURE_KEYS = `(() => {
  globalThis.keyTimes = [];
  let pressed = null;
  let painted = null;
  const settle = () => { if (pressed !== null && painted !== null) keyTimes.push(painted - pressed); pressed = painted = null; };
  addEventListener('keydown', (event) => { settle(); pressed = event.timeStamp; }, true);
  new MutationObserver((records) => {
    if (pressed === null) return;
    const seen = (node) => { const element = node instanceof Element ? node : node.parentElement; return element?.closest('.answer, .ledger, .gloss, .find') && element.getBoundingClientRect().top < innerHeight; };
    const answer = records.some(({ target, addedNodes }) => addedNodes.length ? [...addedNodes].some(seen) : seen(target));
    if (!answer) return;
    const channel = new MessageChannel();
    requestAnimationFrame(() => { channel.port1.onmessage = () => { painted = performance.now(); }; channel.port2.postMessage(0); });
  }).observe(document.getElementById('main') ?? document.body, { subtree: true, childList: true, characterData: true });
})()`;

/** The raw limit: the lab's bare answer put into an empty page as text. */
export const RAW_KEYS = `async (all) => {
  document.body.textContent = '';
  const out = document.body.appendChild(document.createElement('pre'));
  const times = [];
  for (const words of all) for (let length = 1; length <= words.length; length += 1) {
    const start = performance.now();
    const answer = await fetch('/api/find?limit=60&words=' + encodeURIComponent(words.slice(0, length)));
    out.textContent = await answer.text();
    await new Promise((done) => requestAnimationFrame(() => { const channel = new MessageChannel(); channel.port1.onmessage = done; channel.port2.postMessage(0); }));
    times.push(performance.now() - start);
    await new Promise((done) => setTimeout(done, 30));
  }
  return times;
}`;

/** Scrolls to the end and back as a wheel would, and answers the length of each frame in milliseconds. */
export const MEASURE_FRAMES = `new Promise((done) => {
  const frames = [];
  let last = performance.now();
  let way = 1;
  const step = (now) => {
    frames.push(now - last);
    last = now;
    scrollBy(0, way * 120);
    const end = way > 0 ? scrollY + innerHeight >= document.documentElement.scrollHeight - 2 : scrollY <= 0;
    if (end && way < 0) return done(frames.slice(2));
    if (end) way = -1;
    requestAnimationFrame(step);
  };
  requestAnimationFrame(step);
})`;
