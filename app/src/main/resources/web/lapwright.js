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
    var notices = document.getElementById('notices');
    if (notices) {
      var words = document.createElement('p');
      words.className = 'notice';
      words.setAttribute('role', 'alert');
      words.textContent = 'The program does not answer. Your laps are still in the boxes. Start it again, then press the button again.';
      notices.replaceChildren(words);
    }
  }
  document.addEventListener('htmx:sendError', unreachable);
  document.addEventListener('htmx:timeout', unreachable);
  document.addEventListener('htmx:responseError', function (event) {
    var notices = document.getElementById('notices');
    if (notices) {
      var words = document.createElement('p');
      words.className = 'notice';
      words.setAttribute('role', 'alert');
      words.textContent = event.detail.xhr.status === 413
        ? 'That is more than fits: at most 10 MB at a time. Nothing was changed.'
        : 'The program could not do that. Your laps are still in the boxes.';
      notices.replaceChildren(words);
    }
  });
})();
