// Lets a file be dragged onto its field, and says at once when it is larger than is taken.
const field = document.querySelector("[data-drop]");
const input = field?.querySelector("input[type=file]");
const problem = document.getElementById("music-file-problem");

function look() {
  const file = input.files[0];
  const tooLarge = file && file.size > Number(input.dataset.most);
  problem.hidden = !tooLarge;
  problem.textContent = tooLarge ? `The file is too large (${file.name}). What can be: at most 50 MB.` : "";
  if (tooLarge) input.value = "";
}

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
