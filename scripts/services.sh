# Sourced: what the tests need beside a JDK. Each function finds it, installs it where it may, or says so and fails.

installed_now=""
install_debian() {
  command -v apt-get >/dev/null 2>&1 && [ "$(id -u)" = 0 ] || return 1
  [ -n "$installed_now" ] || apt-get update >/dev/null 2>&1 || return 1
  installed_now=yes
  DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$@" >/dev/null 2>&1
}

find_chromium() {
  local name
  for name in chromium chromium-browser google-chrome; do
    command -v "$name" 2>/dev/null && return 0
  done
  return 1
}

need_chromium() {
  chromium=$(find_chromium) || {
    say "Installing Chromium for the browser tests …"
    install_debian chromium || { say "The browser tests need Chromium and may not install it: install it, or run ./test --quick."; return 1; }
    chromium=$(find_chromium)
  }
}

postgres_bin() {
  local bin
  bin=$(ls -d /usr/lib/postgresql/*/bin 2>/dev/null | sort -V | tail -n 1)
  [ -n "$bin" ] && [ -x "$bin/initdb" ] && printf '%s' "$bin"
}

# Only its programs: the tests start a server of their own and stop it again.
need_postgres() {
  postgres_bin >/dev/null || {
    say "Installing PostgreSQL for the database tests …"
    install_debian postgresql || { say "The database tests need PostgreSQL and may not install it: install it (on Debian: apt-get install postgresql)."; return 1; }
  }
}
