#!/usr/bin/env bash
# Starts the published Linux folder in a bare Debian without SDK, Node, fonts or ICU, asks for its pages and files, and looks
# at what comes. Needs root, debootstrap, curl and pdftotext. MIRROR=URL takes Debian from elsewhere, PORT=N listens elsewhere.
# The bare Debian lies outside the repository, whose tools would walk into its devices.
set -euo pipefail
cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.."

folder="artifacts/publish/passagework-linux-x64"
bare="${TMPDIR:-/tmp}/passagework-bare-debian"
got="artifacts/publish-work/got"
url="http://127.0.0.1:${PORT:-5099}"
mirror="${MIRROR:-http://deb.debian.org/debian}"
wrong=0
studio=""

give_up() {
  printf '%s\n' "$*" >&2
  exit 1
}

make_bare_debian() {
  if [[ ! -e "$bare/made" ]]; then
    rm -rf "$bare"
    debootstrap --variant=minbase bookworm "$bare" "$mirror" > /dev/null
    touch "$bare/made"
  fi
  rm -rf "$bare/opt/passagework" "$bare/tmp/studio"
  cp -r "$folder" "$bare/opt/passagework"
  local tool
  for tool in dotnet node npm fc-list; do
    if chroot "$bare" sh -c "command -v $tool" > /dev/null; then
      give_up "$tool is there, so this would prove nothing"
    fi
  done
}

clean_up() {
  if [[ -n "$studio" ]]; then kill "$studio" 2> /dev/null || true; fi
  wait 2> /dev/null || true
  if mountpoint -q "$bare/proc"; then umount "$bare/proc"; fi
}

inside() { chroot "$bare" /usr/bin/env -i HOME=/root PATH=/usr/bin:/bin "$@"; }

complain() {
  printf 'WRONG: %s\n' "$*"
  wrong=1
}

# Without OpenSSL it must say so; then it gets it.
ask_without_openssl() {
  if compgen -G "$bare/usr/lib/*/libssl.so*" > /dev/null; then return; fi
  local words
  words="$(inside /opt/passagework/Passagework --data /tmp/studio --no-browser 2>&1)" && complain "it ran without OpenSSL"
  [[ "$words" == *"no OpenSSL"* ]] || complain "without OpenSSL it says: $words"
  inside apt-get update -q > /dev/null
  inside apt-get install -y -q --no-install-recommends libssl3 > /dev/null 2>&1
}

start_studio() {
  local begun="$EPOCHREALTIME"
  chroot "$bare" /usr/bin/env -i HOME=/root /opt/passagework/Passagework \
    --data /tmp/studio --no-browser --urls "$url" > "$got/words" 2>&1 &
  studio=$!
  local tries=0
  until curl -sf -o /dev/null "$url/"; do
    tries=$((tries + 1))
    if ((tries > 300)) || ! kill -0 "$studio" 2> /dev/null; then
      cat "$got/words"
      give_up "The studio did not open"
    fi
    sleep 0.1
  done
  awk -v a="$begun" -v b="$EPOCHREALTIME" 'BEGIN { printf "first page after %.1f seconds\n", b - a }'
}

# ask ADDRESS LEAST_BYTES FILE
ask() {
  local answer
  answer="$(curl -s -o "$got/$3" -w '%{http_code} %{size_download}' "$url$1")"
  printf '%s bytes %s\n' "$answer" "$1"
  [[ "${answer% *}" == 200 ]] || complain "$1 answers ${answer% *}"
  ((${answer#* } >= $2)) || complain "$1 has ${answer#* } bytes, fewer than $2"
}

# An empty picture of the same size packs to a tenth of this.
ask_for_everything() {
  ask / 20000 today
  ask /exercises 100000 shelf
  ask /exercises/groups-of-five-up 60000 exercise
  ask /choose 20000 choose
  ask /pieces 40000 pieces
  ask /settings 20000 settings
  ask /studio.css 5000 css
  ask /fonts/alegreya-latin-400-normal.woff 20000 font
  ask /exercises/groups-of-five-up/file/sheet.pdf 40000 sheet.pdf
  ask /exercises/groups-of-five-up/file/png 100000 picture.png
  ask /exercises/groups-of-five-up/file/wav 1000000 sound.wav
}

look_inside() {
  local text
  text="$(pdftotext "$got/sheet.pdf" -)"
  [[ "$text" == *"Groups of five, rising"* ]] || complain "the PDF does not hold its title"
  [[ "$(head -c 8 "$got/picture.png" | od -An -tx1 | tr -d ' \n')" == 89504e470d0a1a0a ]] || complain "the PNG is none"
  [[ "$(head -c 4 "$got/sound.wav")" == RIFF ]] || complain "the WAV is none"
  if (($(tail -c +45 "$got/sound.wav" | tr -d '\000' | wc -c) < 500000)); then complain "the WAV is silent"; fi
  grep -q 'Groups of five, rising' "$got/exercise" || complain "the exercise's page does not hold its title"
  if grep -q '   at ' "$got/words"; then complain "there is a stack trace: $(cat "$got/words")"; fi
}

[[ -x "$folder/Passagework" ]] || give_up "There is no $folder: run ./publish linux-x64 first."
((EUID == 0)) || give_up "This needs root, for debootstrap and chroot."
for tool in debootstrap curl pdftotext; do
  command -v "$tool" > /dev/null || give_up "The command $tool is missing"
done

rm -rf "$got"
mkdir -p "$got"
make_bare_debian
trap clean_up EXIT
mount -t proc proc "$bare/proc"
ask_without_openssl
start_studio
ask_for_everything
look_inside
((wrong == 0)) || give_up "Something is wrong, see above"
echo "All right"
