#!/usr/bin/env bash
# A private PostgreSQL server for the tests: `postgres.sh start` prints a connection string and leaves the server running, `postgres.sh stop` ends it.
# POSTGRES_HOME says where its files lie (a folder of its own; default: out/postgres of the repository).
set -euo pipefail
repository=$(cd "$(dirname "$0")/.." && pwd)
home=${POSTGRES_HOME:-$repository/out/postgres}

fail() {
  echo "tests/postgres.sh: $*" >&2
  exit 2
}

programs() {
  local candidates=("$(dirname "$(command -v initdb 2>/dev/null || echo /none/initdb)")" /usr/lib/postgresql/*/bin)
  local i
  for ((i = ${#candidates[@]} - 1; i >= 0; i--)); do
    if [ -x "${candidates[i]}/initdb" ] && [ -x "${candidates[i]}/pg_ctl" ]; then
      echo "${candidates[i]}"
      return
    fi
  done
  fail "PostgreSQL is missing: install it (on Debian: apt-get install postgresql), or set ESTIMATOR_POSTGRES to the connection string of a server whose user may create databases."
}

# The server refuses to run as root; then the user that its package makes runs it, in a folder that this user may reach.
as_server_user() {
  if [ "$(id -u)" -ne 0 ]; then
    "$@"
  elif id postgres >/dev/null 2>&1; then
    (cd / && runuser -u postgres -- "$@")
  else
    fail "PostgreSQL does not run as root, and there is no user postgres: run the tests as another user, or set ESTIMATOR_POSTGRES."
  fi
}

free_port() {
  local port
  for port in $(shuf -i 20000-39999 -n 50); do
    if ! (exec 3<>"/dev/tcp/127.0.0.1/$port") 2>/dev/null; then
      echo "$port"
      return
    fi
  done
  fail "no free port was found."
}

start() {
  local bin port data
  bin=$(programs)
  stop
  mkdir -p "$home"
  if [ "$(id -u)" -eq 0 ]; then
    # Under a temporary folder: the way to the repository may be closed to the server's user.
    data=$(mktemp -d "${TMPDIR:-/tmp}/estimator-postgres.XXXXXX")
    chown postgres "$data"
  else
    data=$(mktemp -d "$home/run.XXXXXX")
  fi
  echo "$data" >"$home/where"
  port=$(free_port)
  as_server_user "$bin/initdb" -D "$data/data" -A trust -U postgres -E UTF8 --locale=C.UTF-8 --no-sync >"$home/log" 2>&1 || { cat "$home/log" >&2; fail "initdb failed."; }
  # A server for tests: nothing on it must outlive a power cut.
  as_server_user "$bin/pg_ctl" -D "$data/data" -w -l "$data/server.log" \
    -o "-p $port -c listen_addresses=127.0.0.1 -k '' -c fsync=off -c full_page_writes=off" start >>"$home/log" 2>&1 || {
    cat "$home/log" "$data/server.log" >&2 || true
    fail "the server did not start."
  }
  echo "Host=127.0.0.1;Port=$port;Username=postgres;Database=postgres"
}

stop() {
  [ -f "$home/where" ] || return 0
  local data
  data=$(cat "$home/where")
  if [ -d "$data/data" ]; then
    as_server_user "$(programs)/pg_ctl" -D "$data/data" -m fast -w stop >/dev/null 2>&1 || true
  fi
  rm -rf "$data" "$home/where"
}

case "${1:-}" in
  start) start ;;
  stop) stop ;;
  *) fail "found '${1:-}', start or stop is accepted." ;;
esac
