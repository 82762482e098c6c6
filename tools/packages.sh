# Sourced by ./run and ./test: installs the Debian packages that are missing, after saying so.

# need_packages "to build Evenclaw" yes|no package...
need_packages() {
  local purpose=$1 agreed=$2 missing=() as_root=() answer
  shift 2
  local installed
  # dpkg-query fails when it has never heard of one of them, which is what is asked here.
  installed=" $({ dpkg-query -W -f '${Package} ${db:Status-Abbrev}\n' "$@" 2>/dev/null || true; } |
    awk '$2 == "ii" { printf "%s ", $1 }')"
  for package in "$@"; do
    [[ $installed == *" $package "* ]] || missing+=("$package")
  done
  ((${#missing[@]})) || return 0

  echo "These Debian packages are needed $purpose and not there yet:"
  echo "  ${missing[*]}"
  if [[ $(id -u) -ne 0 ]]; then
    if ! command -v sudo >/dev/null; then
      echo "Installing them needs root, and there is no sudo. As root:" >&2
      echo "  apt-get install --no-install-recommends ${missing[*]}" >&2
      return 1
    fi
    as_root=(sudo)
  fi
  if [[ $agreed != yes && -t 0 && -z ${CI:-} ]]; then
    read -r -p "Install them now with apt-get? [Y/n] " answer
    [[ ${answer:-y} =~ ^[Yy] ]] || { echo "Nothing was installed."; return 1; }
  fi
  "${as_root[@]}" apt-get update -qq &&
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
      apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}
