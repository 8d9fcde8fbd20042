// Small conveniences; every page works without them.
(function () {
  'use strict';

  // Previews come by themselves now, so the buttons that ask for them go.
  document.documentElement.classList.add('scripted');

  function closest(event, selector) {
    return event.target instanceof Element ? event.target.closest(selector) : null;
  }

  // A verdict belongs to the laps it was given for.
  document.addEventListener('input', function (event) {
    if (closest(event, '#compare .boxes')) {
      var stale = document.querySelector('#verdict .stale');
      if (stale) {
        stale.hidden = false;
      }
    }
  });

  // Enter in a field presses the button of its part, not the first button of the page.
  document.addEventListener('keydown', function (event) {
    var field = event.key === 'Enter' ? closest(event, 'input[data-enter]') : null;
    var button = field && document.querySelector('[data-press="' + field.dataset.enter + '"]');
    if (button) {
      event.preventDefault();
      button.click();
    }
  });

  // A second press of "Keep it" is harmless, but need not happen.
  document.addEventListener('submit', function (event) {
    var button = event.submitter;
    if (button && button.dataset.press === 'keep') {
      window.setTimeout(function () { button.disabled = true; }, 0);
    }
  });
  window.addEventListener('pageshow', function () {
    document.querySelectorAll('[data-press="keep"]').forEach(function (button) { button.disabled = false; });
  });

  // No answer: say so where the eye is, and that nothing is lost.
  function unreachable() {
    window.lapwright.notice('The program does not answer. Your laps are still in the boxes. Start it again, then press the button again.');
  }
  document.addEventListener('htmx:sendError', unreachable);
  document.addEventListener('htmx:timeout', unreachable);
  document.addEventListener('htmx:responseError', function (event) {
    window.lapwright.notice(event.detail.xhr.status === 413
      ? 'That is more than fits: at most 10 MB at a time. Nothing was changed.'
      : 'The program could not do that. Your laps are still in the boxes.');
  });
})();

// Track: one cursor for the drawing from above, the speed and the slider.
(function () {
  'use strict';

  var cursor = document.getElementById('cursor');
  var slider = document.getElementById('place');
  if (!cursor || !slider) {
    return;
  }

  function list(name) {
    return cursor.dataset[name] ? cursor.dataset[name].split(' ') : [];
  }

  var metres = list('m'), speeds = list('v'), limits = list('limit'), xs = list('x'), ys = list('y'), losses = list('loss');
  var lap = Number(cursor.dataset.lap);
  var here = document.getElementById('here');
  var reading = document.getElementById('reading');
  var hairs = document.querySelectorAll('.hair');

  function show() {
    var at = Number(slider.value);
    var loss = losses.length ? ', ' + (losses[at] > 0 ? '+' : '') + losses[at].replace('-', '\u2212') + ' s so far' : '';
    var words = metres[at] + ' m: ' + speeds[at] + ' m/s, limit ' + limits[at] + loss;
    reading.textContent = words;
    slider.setAttribute('aria-valuetext', words);
    here.removeAttribute('hidden');
    here.setAttribute('cx', xs[at] + '%');
    here.setAttribute('cy', ys[at] + '%');
    hairs.forEach(function (hair) {
      var across = 100 * metres[at] / lap + '%';
      hair.setAttribute('x1', across);
      hair.setAttribute('x2', across);
    });
  }

  function nearest(box, event) {
    var best = 0, least = Infinity;
    for (var i = 0; i < xs.length; i++) {
      var dx = box.left + box.width * xs[i] / 100 - event.clientX;
      var dy = box.top + box.height * ys[i] / 100 - event.clientY;
      if (dx * dx + dy * dy < least) {
        least = dx * dx + dy * dy;
        best = i;
      }
    }
    return best;
  }

  function before(place) {
    var at = 0;
    while (at + 1 < metres.length && metres[at + 1] <= place) {
      at++;
    }
    return at;
  }

  function follow(event) {
    var drawing = event.currentTarget;
    if (event.type === 'pointermove' && event.pointerType !== 'mouse' && !drawing.hasPointerCapture(event.pointerId)) {
      return;
    }
    var box = drawing.getBoundingClientRect();
    if (event.type === 'pointerdown' && event.pointerType !== 'mouse') {
      drawing.setPointerCapture(event.pointerId);
    }
    slider.value = drawing.dataset.pointed === 'map'
      ? nearest(box, event)
      : before((event.clientX - box.left) / box.width * lap);
    show();
  }

  document.querySelectorAll('[data-pointed]').forEach(function (drawing) {
    drawing.addEventListener('pointerdown', follow);
    drawing.addEventListener('pointermove', follow);
  });
  slider.addEventListener('input', show);
})();

// Brings what is shown up to date and leaves alone what is the same, so that the focus stays where it is.
(function () {
  'use strict';

  function kin(old, fresh) {
    return old.nodeName === fresh.nodeName;
  }

  function liken(old, fresh) {
    if (old.isEqualNode(fresh)) {
      return;
    }
    if (old.nodeType !== Node.ELEMENT_NODE) {
      old.nodeValue = fresh.nodeValue;
      return;
    }
    Array.from(old.attributes).forEach(function (attribute) {
      if (!fresh.hasAttribute(attribute.name)) {
        old.removeAttribute(attribute.name);
      }
    });
    Array.from(fresh.attributes).forEach(function (attribute) {
      if (old.getAttribute(attribute.name) !== attribute.value) {
        old.setAttribute(attribute.name, attribute.value);
      }
    });
    within(old, Array.from(old.childNodes), Array.from(fresh.childNodes));
  }

  // What came or went lies between what stayed at the beginning and what stayed at the end.
  function within(parent, olds, news) {
    var most = Math.min(olds.length, news.length);
    var head = 0;
    while (head < most && kin(olds[head], news[head])) {
      liken(olds[head], news[head]);
      head++;
    }
    var tail = 0;
    while (tail < most - head && kin(olds[olds.length - 1 - tail], news[news.length - 1 - tail])) {
      tail++;
      liken(olds[olds.length - tail], news[news.length - tail]);
    }
    olds.slice(head, olds.length - tail).forEach(function (gone) { gone.remove(); });
    news.slice(head, news.length - tail).forEach(function (come) {
      parent.insertBefore(come, tail > 0 ? olds[olds.length - tail] : null);
      if (come.nodeType === Node.ELEMENT_NODE && window.htmx) {
        painted(function () { window.htmx.process(come); });
      }
    });
  }

  // What nobody sees can wait until what they see is there. A button that is pressed before that sends its form the plain way.
  function painted(task) {
    window.requestAnimationFrame(function () { window.setTimeout(task, 0); });
  }

  // Says something where the eye is.
  function notice(text) {
    var notices = document.getElementById('notices');
    if (notices) {
      var words = document.createElement('p');
      words.className = 'notice';
      words.setAttribute('role', 'alert');
      words.textContent = text;
      notices.replaceChildren(words);
    }
  }

  window.lapwright = { liken: liken, notice: notice };
})();

// Track editor: while somebody types, only what comes out otherwise is drawn anew. A track of two hundred pieces has some
// two thousand fields, which the general way of this page takes long to collect on a phone.
(function () {
  'use strict';

  var PAUSE_MS = 100;
  var timer = 0;
  var asked = null;

  function drop() {
    window.clearTimeout(timer);
    if (asked) {
      asked.abort();
      asked = null;
    }
  }

  function redraw(form) {
    var sum = document.getElementById('sum');
    var body = new URLSearchParams(new FormData(form));
    body.set('do', 'look');
    asked = new AbortController();
    window.fetch(form.action, {
      method: 'POST',
      headers: { 'HX-Request': 'true', 'HX-Target': 'sum' },
      body: body,
      signal: asked.signal
    }).then(function (answer) {
      if (!answer.ok) {
        throw new Error(String(answer.status));
      }
      return answer.text();
    }).then(function (text) {
      var fresh = document.createRange().createContextualFragment(text).getElementById('sum');
      if (sum.isConnected && fresh) {
        window.lapwright.liken(sum, fresh);
        form.dispatchEvent(new CustomEvent('redrawn', { bubbles: true }));
      }
    }).catch(function (fault) {
      if (fault.name !== 'AbortError') {
        window.lapwright.notice('The drawing could not be brought up to date. What you typed is still here; it is drawn again with the next change.');
      }
    });
  }

  document.addEventListener('input', function (event) {
    var form = event.target instanceof Element ? event.target.closest('form.drawing') : null;
    if (form) {
      drop();
      timer = window.setTimeout(redraw, PAUSE_MS, form);
    }
  });
  // A button that is pressed sends the form itself and brings a new one.
  document.addEventListener('htmx:beforeRequest', drop);
  document.addEventListener('submit', drop);
})();

// Ballast: touching or dragging on the car from above says where the piece goes; the fields do the same.
(function () {
  'use strict';

  function rounded(value) {
    return String(Math.round(2 * value) / 2);
  }

  function put(id, value) {
    var field = document.getElementById(id);
    if (field) {
      field.value = rounded(value);
    }
  }

  function place(event) {
    var figure = event.target instanceof Element ? event.target.closest('[data-place]') : null;
    if (!figure || (event.type === 'pointermove' && event.buttons === 0)) {
      return;
    }
    var box = figure.querySelector('svg').getBoundingClientRect();
    var unit = 360 / box.width;
    var x = (event.clientX - box.left) * unit, y = (event.clientY - box.top) * unit;
    put('f-x_mm', (Number(figure.dataset.axleY) - y) / Number(figure.dataset.scale));
    put('f-y_mm', (Number(figure.dataset.axleX) - x) / Number(figure.dataset.scale));
    event.preventDefault();
    document.getElementById('change').dispatchEvent(new Event('input', { bubbles: true }));
  }

  document.addEventListener('pointerdown', place);
  document.addEventListener('pointermove', place);

  // Another piece chosen: begin from where it sits, not from where the first one does.
  document.addEventListener('change', function (event) {
    var option = event.target instanceof Element && event.target.id === 'f-piece' ? event.target.selectedOptions[0] : null;
    if (option && option.dataset.x) {
      put('f-x_mm', Number(option.dataset.x));
      put('f-y_mm', Number(option.dataset.y));
      put('f-z_mm', Number(option.dataset.z));
    }
  });
})();

// Run: taps are stamped here, kept here until they are safe, and sent in their order.
(function () {
  'use strict';

  var run = document.getElementById('run');
  var tap = document.getElementById('tap');
  if (!run || !tap) {
    return;
  }
  var SHELF = 'lapwright-passes-' + run.dataset.drive;
  // performance.now() starts anew with every page: stamps of two pages have nothing in common.
  var boot = Math.random().toString(36).slice(2) + Date.now().toString(36);
  var sequence = 0;
  var sending = false;
  var link = document.getElementById('link');

  function waiting() {
    try {
      return JSON.parse(window.localStorage.getItem(SHELF) || '[]');
    } catch (broken) {
      return [];
    }
  }

  function shelve(passes) {
    window.localStorage.setItem(SHELF, JSON.stringify(passes));
  }

  function tell(words) {
    link.hidden = !words;
    link.textContent = words;
  }

  // How the drive stands comes by itself as long as the page is looked at; else, or when that fails, the page asks.
  var stream = null;
  var asking = false;
  var away = false;
  var leaving = false;

  function show(text) {
    var fresh = document.createRange().createContextualFragment(text).getElementById('now');
    var now = document.getElementById('now');
    if (fresh && now && fresh.dataset.seen.split('-')[0] === run.dataset.drive) {
      window.lapwright.liken(now, fresh);
      lapped();
    } else {
      window.location.reload();
    }
  }

  function ask() {
    if (leaving || asking || live()) {
      return;
    }
    asking = true;
    window.fetch('/run').then(function (answer) {
      return answer.text();
    }).then(function (text) {
      asking = false;
      unreached(false);
      if (!leaving) {
        show(text);
      }
    }).catch(function () {
      asking = false;
      unreached(true);
    });
  }

  function live() {
    return stream !== null && stream.readyState === window.EventSource.OPEN;
  }

  function unreached(so) {
    if (so !== away && waiting().length === 0) {
      tell(so ? 'The program does not answer. What is shown is how it was; this page tries again by itself.' : '');
    }
    away = so;
  }

  function follow() {
    if (leaving || document.hidden || !window.EventSource || (stream && stream.readyState !== window.EventSource.CLOSED)) {
      return;
    }
    stream = new window.EventSource('/run/stream?seen=' + document.getElementById('now').dataset.seen);
    stream.onopen = function () { unreached(false); };
    stream.addEventListener('now', function (event) { show(event.data); });
    stream.addEventListener('over', function () { window.location.reload(); });
  }

  // A browser has few connections to one address: a page that nobody looks at must not hold one.
  function looked() {
    if (document.hidden) {
      leave();
    }
    follow();
  }
  document.addEventListener('visibilitychange', looked);
  function leave() {
    if (stream) {
      stream.close();
      stream = null;
    }
  }
  window.addEventListener('pagehide', leave);
  // Whoever presses a button is on the way to the page that answers it: news of the same press must not call them back.
  document.addEventListener('submit', function () {
    leaving = true;
    leave();
  });
  window.addEventListener('pageshow', function () {
    leaving = false;
    follow();
  });
  window.setInterval(function () {
    follow();
    ask();
  }, 2000);

  function send() {
    var passes = waiting();
    if (sending || passes.length === 0) {
      return;
    }
    sending = true;
    window.fetch('/api/passes', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ drive: Number(run.dataset.drive), passes: passes })
    }).then(function (answer) {
      if (answer.ok) {
        shelve(waiting().slice(passes.length));
        tell('');
        ask();
      } else if (answer.status === 422) {
        shelve(waiting().slice(passes.length));
        tell('This drive takes no more laps. Open Run again.');
      } else {
        tell('Not saved yet: ' + passes.length + ' taps wait here and will be sent again.');
      }
    }).catch(function () {
      tell('The program does not answer. ' + passes.length + ' taps wait here, safe, and will be sent again.');
    }).finally(function () {
      sending = false;
    });
  }

  function pass(event) {
    var at = event.timeStamp > 0 ? event.timeStamp : window.performance.now();
    var passes = waiting();
    passes.push({
      source: 'screen', boot: boot, sequence: sequence++, lane: Number(run.dataset.lane), clock: 'hand',
      time_ns: Math.round(at * 1e6), sigma_s: 0.1
    });
    shelve(passes);
    send();
  }

  tap.addEventListener('pointerdown', function (event) { pass(event); event.preventDefault(); });
  tap.addEventListener('keydown', function (event) {
    if ((event.key === 'Enter' || event.key === ' ') && !event.repeat) {
      pass(event);
      event.preventDefault();
    }
  });
  document.addEventListener('keydown', function (event) {
    var typing = event.target instanceof Element && event.target.closest('input, select, textarea, button, a, summary');
    if (event.key === ' ' && !event.repeat && !typing) {
      pass(event);
      event.preventDefault();
    }
  });
  window.setInterval(send, 2000);

  // A new lap is told once, to ears that asked for it and to screen readers; those get a moment between two, and the newest.
  var TELL_MS = 4000;
  var toldAt = 0;
  var timer = 0;

  function newest() {
    var shown = document.querySelector('.run-laps .said');
    return shown ? shown.textContent.trim().replace(/\s+/g, ' ') : '';
  }
  var last = newest();

  // The lap under way runs from the moment its pass is heard of; how long it took is said by the gate alone.
  var clock = document.getElementById('running');
  var seen = document.getElementById('now').dataset.seen;
  var since = null;

  function clocked() {
    var now = document.getElementById('now');
    if (now.dataset.seen !== seen) {
      var counts = function (name) { return name.split('-').slice(2, 6).join('-'); };
      since = now.dataset.open !== '1' ? null
        : counts(now.dataset.seen) !== counts(seen) || since === null ? window.performance.now() : since;
      seen = now.dataset.seen;
    }
    clock.hidden = since === null;
  }
  window.setInterval(function () {
    if (since !== null) {
      clock.querySelector('.time').textContent = ((window.performance.now() - since) / 1000).toFixed(1) + ' s';
    }
  }, 100);

  var sounds = null;
  function beep() {
    var times = Array.from(document.querySelectorAll('.run-laps .said')).map(function (each) {
      return parseFloat(each.textContent.trim().replace(/^\d+\s+/, ''));
    });
    var best = times.length > 1 && times[0] <= Math.min.apply(null, times.slice(1));
    var tone = sounds.createOscillator();
    var loud = sounds.createGain();
    tone.frequency.value = best ? 1320 : 880;
    loud.gain.setValueAtTime(0.3, sounds.currentTime);
    loud.gain.exponentialRampToValueAtTime(0.001, sounds.currentTime + 0.25);
    tone.connect(loud).connect(sounds.destination);
    tone.start();
    tone.stop(sounds.currentTime + 0.25);
  }
  // A browser lets a page make sounds only after somebody has asked for them.
  document.getElementById('tone').addEventListener('change', function (event) {
    if (event.target.checked && !sounds && window.AudioContext) {
      sounds = new window.AudioContext();
    }
  });

  function lapped() {
    clocked();
    var words = newest();
    if (words && words !== last) {
      last = words;
      if (sounds && document.getElementById('tone').checked) {
        beep();
      }
      window.clearTimeout(timer);
      timer = window.setTimeout(function () {
        toldAt = Date.now();
        document.getElementById('heard').textContent = 'Lap ' + last;
      }, Math.max(0, toldAt + TELL_MS - Date.now()));
      if (document.getElementById('speak').checked && window.speechSynthesis) {
        window.speechSynthesis.speak(new window.SpeechSynthesisUtterance(words.replace(/^\d+ /, '').replace(' s', '')));
      }
    }
  }
})();

// Gate on this computer: what it hears comes by itself while somebody looks.
(function () {
  'use strict';

  if (!document.getElementById('gate')) {
    return;
  }
  var stream = null;

  function show(event) {
    var now = document.getElementById('gate-now');
    var fresh = document.createRange().createContextualFragment(event.data).getElementById('gate-now');
    if (now && fresh) {
      window.lapwright.liken(now, fresh);
    }
  }

  function leave() {
    if (stream) {
      stream.close();
      stream = null;
    }
  }

  function follow() {
    if (document.hidden) {
      leave();
    } else if (!stream && window.EventSource) {
      stream = new window.EventSource('/run/gate/stream?seen=' + document.getElementById('gate-now').dataset.seen);
      stream.addEventListener('now', show);
    }
  }
  document.addEventListener('visibilitychange', follow);
  window.addEventListener('pagehide', leave);
  window.addEventListener('pageshow', follow);
})();
