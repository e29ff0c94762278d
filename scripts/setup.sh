# Sourced by ./start and ./check: what both need before they can build.
# Says each step, changes nothing that is already right, asks nothing.

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
cd "$root"

# English output, because ./check reads it; no servers left behind, because they would outlive a CI run.
export DOTNET_CLI_UI_LANGUAGE=en DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1
export MSBUILDDISABLENODEREUSE=1 UseSharedCompilation=false

say() { printf '\n== %s\n' "$*"; }

give_up() {
  printf '%s\n' "$*" >&2
  exit 1
}

check_sdk() {
  say "Checking the .NET SDK"
  local wanted="Passagework needs the .NET SDK 10, from 10.0.100 up: https://dotnet.microsoft.com/download"
  command -v dotnet > /dev/null || give_up "The command 'dotnet' is missing. $wanted"
  local version
  version="$(dotnet --version)" || give_up "No fitting SDK found. $wanted"
  [[ "$version" == 10.* ]] || give_up "Found SDK $version. $wanted"
  echo "SDK $version"
}

install_missing_packages() {
  say "Looking for the Debian packages of packages.debian"
  local purpose="$1" missing=() tool package only
  while read -r tool package only; do
    if [[ -n "$tool" && "$tool" != \#* && "${only:-$purpose}" == "$purpose" ]] && ! command -v "$tool" > /dev/null; then
      missing+=("$package")
    fi
  done < packages.debian
  if ((${#missing[@]} == 0)); then
    echo "All there"
    return
  fi

  command -v apt-get > /dev/null || give_up "Missing, and there is no apt-get: please install ${missing[*]}"
  if ((EUID != 0)); then
    give_up "Missing packages. Run this line, then this script again:
sudo apt-get update && sudo apt-get install -y --no-install-recommends ${missing[*]}"
  fi

  echo "Installing ${missing[*]}"
  export DEBIAN_FRONTEND=noninteractive
  apt-get update -q < /dev/null
  apt-get install -y -q --no-install-recommends "${missing[@]}" < /dev/null
}

restore_packages() {
  say "Restoring packages as locked"
  dotnet restore --locked-mode < /dev/null
}

# set_up start|check
set_up() {
  check_sdk
  install_missing_packages "$1"
  restore_packages
}
