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

need_postgres() {
  pg_bin=$(postgres_bin) || {
    say "Installing PostgreSQL for the database tests …"
    install_debian postgresql || { say "The database tests need PostgreSQL and may not install it: install it (on Debian: apt-get install postgresql)."; return 1; }
    pg_bin=$(postgres_bin)
  }
}

# The server refuses to run as root, so as root it runs as the user its package made.
as_server() { if [ "$(id -u)" = 0 ]; then (cd / && runuser -u postgres -- "$@"); else "$@"; fi; }

start_postgres() {
  need_postgres || return 1
  pg_home=$(mktemp -d)
  chmod 755 "$pg_home"
  [ "$(id -u)" != 0 ] || chown postgres: "$pg_home"
  pg_port=$((20000 + RANDOM % 20000))
  as_server "$pg_bin/initdb" -D "$pg_home/data" -A trust -U postgres --no-sync -E UTF8 --locale=C.UTF-8 >/dev/null
  as_server "$pg_bin/pg_ctl" -D "$pg_home/data" -w -l "$pg_home/log" \
    -o "-p $pg_port -c listen_addresses=127.0.0.1 -c unix_socket_directories=$pg_home -c fsync=off -c full_page_writes=off" start >/dev/null
  as_server "$pg_bin/createdb" -h "$pg_home" -p "$pg_port" -U postgres hornwright
  export HORNWRIGHT_TEST_POSTGRES="jdbc:postgresql://127.0.0.1:$pg_port/hornwright?user=postgres"
}

stop_postgres() {
  [ -n "${pg_home:-}" ] || return 0
  as_server "$pg_bin/pg_ctl" -D "$pg_home/data" -m immediate stop >/dev/null 2>&1 || true
  rm -rf "$pg_home"
}
