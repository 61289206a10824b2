# Shared by tools/start and tools/check: says what happens, installs packages, builds. Sourced, not run.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$root" || exit 1

say() { printf '\n== %s\n' "$*"; }
fail() { printf '\n** %s\n' "$*" >&2; exit 1; }

# Packages of tools/packages.txt that are not installed yet.
missing_packages() {
    sed -e 's/#.*//' -e '/^[[:space:]]*$/d' tools/packages.txt | while read -r package; do
        dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'install ok installed' || printf '%s ' "$package"
    done
}

install_packages() {
    command -v apt-get >/dev/null || fail "This machine has no apt-get. Install the packages of tools/packages.txt your own way, then use --no-install."
    local missing as_root=
    missing=$(missing_packages)
    if [ -z "$missing" ]; then say "All packages of tools/packages.txt are installed"; return; fi
    if [ "$(id -u)" -ne 0 ]; then
        command -v sudo >/dev/null || fail "Not root and no sudo here. As root install: $missing"
        as_root=sudo
    fi
    say "Installing Debian packages: $missing"
    $as_root apt-get update || fail "apt-get update failed; is there a network?"
    # shellcheck disable=SC2086
    $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends $missing || fail "apt-get could not install: $missing"
}

# build PRESET [--target NAME...] [-DOPTION=...]: configure and build, all cores.
build() {
    local preset=$1 options=() targets=()
    for word in "${@:2}"; do case $word in -D*) options+=("$word") ;; *) targets+=("$word") ;; esac; done
    command -v cmake >/dev/null || fail "cmake is not installed; run without --no-install, or install the packages of tools/packages.txt"
    say "Configuring ($preset)"
    cmake --preset "$preset" "${options[@]}" || fail "Configuring failed. The lines above say which package or file is missing."
    say "Building ($preset) on $(nproc) cores"
    cmake --build --preset "$preset" -j "$(nproc)" "${targets[@]}" || fail "The build failed. The first 'error:' above is the one to mend."
}
