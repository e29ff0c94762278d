// Brings a live page back when the studio was away, however the page was reached: the framework's own dialog stays
// closed on some ways, so this watches the classes that it sets and loads the page anew when the studio answers.
const notice = document.getElementById("components-reconnect-modal");
const away = ["components-reconnect-show", "components-reconnect-retrying", "components-reconnect-failed", "components-reconnect-rejected"];
let waiting = false;

async function answers() {
  try {
    return (await fetch("/alive", { cache: "no-store" })).ok;
  } catch {
    return false;
  }
}

async function comeBack() {
  if (waiting) return;
  waiting = true;
  notice.hidden = false;
  while (true) {
    await new Promise((done) => setTimeout(done, 500));
    if (!isAway()) break;
    if (await answers()) {
      location.reload();
      return;
    }
  }
  notice.hidden = true;
  waiting = false;
}

function isAway() {
  return away.some((name) => notice.classList.contains(name));
}

new MutationObserver(() => { if (isAway()) comeBack(); }).observe(notice, { attributes: true, attributeFilter: ["class"] });
