#!/usr/bin/env bash
# Fetches the example tunes of the Debian package abcmidi for the tests in tests/Passagework.Tests/Outside.
# They are unpacked below artifacts; nothing is installed. Does nothing when they are there.
set -euo pipefail
cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.."

folder="artifacts/outside/abcmidi"
tunes="$folder/usr/share/doc/abcmidi/examples"

give_up() {
  printf '%s\n' "$*" >&2
  exit 1
}

if [[ -d "$tunes" ]]; then
  echo "All there"
  exit 0
fi

command -v apt-get > /dev/null \
  || give_up "There is no apt-get: please unpack the Debian package abcmidi into $folder"
rm -rf "$folder"
mkdir -p "$folder"
cd "$folder"
if ! apt-get download -q abcmidi < /dev/null; then
  ((EUID == 0)) || give_up "No list of packages: please run 'sudo apt-get update', then this script again."
  apt-get update -q < /dev/null
  apt-get download -q abcmidi < /dev/null
fi

mkdir -p unpacked
dpkg-deb --extract abcmidi_*.deb unpacked
mv unpacked/usr .
rm -r unpacked abcmidi_*.deb
