#!/usr/bin/env bash
# Starts the published Linux folder in a bare Debian without SDK, Node or fonts, and asks for its pages. Needs root and debootstrap.
set -euo pipefail
cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.."

folder="artifacts/publish/passagework-linux-x64"
bare="artifacts/publish-work/bare-debian"
port="${PORT:-5099}"

give_up() {
  printf '%s\n' "$*" >&2
  exit 1
}

[[ -x "$folder/Passagework" ]] || give_up "There is no $folder: run ./publish linux-x64 first."
((EUID == 0)) || give_up "This needs root, for debootstrap and chroot."
command -v debootstrap > /dev/null || give_up "The command debootstrap is missing: apt-get install debootstrap"

if [[ ! -d "$bare/usr" ]]; then
  debootstrap --variant=minbase bookworm "$bare" > /dev/null
fi
rm -rf "$bare/opt/passagework"
cp -r "$folder" "$bare/opt/passagework"

for tool in dotnet node npm fc-list; do
  if chroot "$bare" sh -c "command -v $tool" > /dev/null; then
    give_up "$tool is there, so this would prove nothing"
  fi
done

chroot "$bare" /opt/passagework/Passagework --data /tmp/studio --no-browser --urls "http://127.0.0.1:$port" &
studio=$!
trap 'kill "$studio" 2> /dev/null || true' EXIT
for _ in $(seq 100); do
  curl -sf "http://127.0.0.1:$port/alive" > /dev/null && break
  sleep 0.2
done

for page in / /exercises /exercises/groups-of-five-up /choose /pieces /settings /studio.css \
  /fonts/alegreya-latin-400-normal.woff /exercises/groups-of-five-up/file/sheet.pdf \
  /exercises/groups-of-five-up/file/png /exercises/groups-of-five-up/file/wav; do
  printf '%s %s\n' "$(curl -s -o /dev/null -w '%{http_code} %{size_download} bytes' "http://127.0.0.1:$port$page")" "$page"
done
