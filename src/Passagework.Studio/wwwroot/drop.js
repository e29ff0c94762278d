// Lets a file be dragged onto its field, says at once what is larger than is taken, and that reading is under way.
const field = document.querySelector("[data-drop]");
const input = field?.querySelector("input[type=file]");
const text = document.getElementById("music-text");
const reading = document.getElementById("music-reading");
const megabyte = 1 << 20;

function tell(where, words) {
  const problem = document.getElementById(where);
  problem.hidden = !words;
  problem.textContent = words;
}

function look() {
  const file = input.files[0];
  const most = Number(input.dataset.most);
  const tooLarge = file && file.size > most;
  tell("music-file-problem", tooLarge ? `The file is too large (${file.name}). What can be: at most ${most / megabyte} MB.` : "");
  if (tooLarge) input.value = "";
}

function measure() {
  const most = Number(text.dataset.most);
  const tooLong = text.value.length > most;
  tell("music-text-problem", tooLong ? `The text is too long to be read as tab. What can be: at most ${most / megabyte} MB; a file may be longer.` : "");
}

reading?.closest("form").addEventListener("submit", () => (reading.hidden = false));
// Back from another page.
addEventListener("pageshow", () => reading && (reading.hidden = true));
text?.addEventListener("input", measure);
if (field) {
  input.addEventListener("change", look);
  for (const name of ["dragenter", "dragover"]) {
    field.addEventListener(name, (event) => {
      event.preventDefault();
      field.classList.add("over");
    });
  }
  for (const name of ["dragleave", "drop"]) {
    field.addEventListener(name, () => field.classList.remove("over"));
  }
  field.addEventListener("drop", (event) => {
    event.preventDefault();
    if (event.dataTransfer.files.length === 0) return;
    input.files = event.dataTransfer.files;
    look();
  });
}
