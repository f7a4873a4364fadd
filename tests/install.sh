# The Debian packages that building and testing need. Sourced, not run.
build_packages=(g++ cmake make pkg-config libcairo2-dev libpango1.0-dev libyaml-cpp-dev libfmt-dev libcli11-dev
    libharfbuzz-dev zlib1g-dev libjpeg-dev libpng-dev libexif-dev libxml2-dev librsvg2-dev libzint-dev liblcms2-dev)
test_packages=(catch2 python3 poppler-utils qpdf mupdf-tools ghostscript imagemagick zbar-tools liblcms2-utils clang-format
    lld clang clang-tidy libclang-rt-dev)

# Installs those that are missing, as root or with sudo; quiet and quick when all are there.
install_packages() {
    local missing=() package
    for package in "$@"; do
        dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
    done
    [ ${#missing[@]} -eq 0 ] && return 0
    local as_root=()
    [ "$(id -u)" -eq 0 ] || as_root=(sudo)
    echo "== installing ${missing[*]}"
    "${as_root[@]}" apt-get update -qq
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq "${missing[@]}" >/dev/null
}
