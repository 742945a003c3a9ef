#!/usr/bin/env bash
# Builds everything and runs every test. Meant for Debian with the .NET SDK of global.json; elsewhere it says what is missing.
set -euo pipefail
cd "$(dirname "$0")/.."

if ! command -v dotnet >/dev/null 2>&1; then
  echo "tests/run.sh: the .NET SDK is missing: install the version that global.json names, so that 'dotnet --version' answers." >&2
  exit 2
fi
if ! dotnet --version >/dev/null 2>&1; then
  echo "tests/run.sh: the .NET SDK of global.json is missing; installed are:" >&2
  dotnet --list-sdks >&2
  exit 2
fi

if ! command -v soffice >/dev/null 2>&1; then
  echo "tests/run.sh: LibreOffice Calc is missing, which recalculates the workbooks: install the Debian package libreoffice-calc." >&2
  exit 2
fi

if ! [ -x /usr/bin/chromium ]; then
  echo "tests/run.sh: Chromium is missing, with which the pages are looked at: install the Debian package chromium." >&2
  exit 2
fi

# The tests of the databases need a PostgreSQL server: the one that ESTIMATOR_POSTGRES names, or a private one for this run.
if [ -z "${ESTIMATOR_POSTGRES:-}" ]; then
  trap 'tests/postgres.sh stop' EXIT
  ESTIMATOR_POSTGRES=$(tests/postgres.sh start) || exit 2
  export ESTIMATOR_POSTGRES
fi

results=${TEST_RESULTS:-out/tests}
rm -rf "$results"
mkdir -p "$results"

dotnet build Estimator.sln -c Release -v quiet

projects=(tests/Estimator.Engine.Tests tests/Estimator.Documents.Tests tests/Estimator.Cli.Tests tests/Estimator.Data.Tests tests/Estimator.Web.Tests tests/Estimator.Browser.Tests)
if [ -n "${ESTIMATOR_DATA:-}" ]; then
  projects+=(tests/Estimator.RealPlans.Tests)
fi

code=0
for project in "${projects[@]}"; do
  name=$(basename "$project")
  start=$SECONDS
  dotnet test --project "$project" -c Release --no-build --report-trx --report-trx-filename "$name.trx" --results-directory "$results" || code=$?
  echo "$name: $((SECONDS - start)) s"
done

shopt -s nullglob
files=("$results"/*.trx)
if [ ${#files[@]} -ne ${#projects[@]} ]; then
  echo "tests/run.sh: ${#projects[@]} projects ran and ${#files[@]} left a result." >&2
  echo "0 passed, 1 failed"
  exit 1
fi
if [ -z "${ESTIMATOR_DATA:-}" ]; then
  echo "The real-plan tests were not run: set ESTIMATOR_DATA to the folder of plans and benchmark instances."
fi

# The counters of each result file are real; the closing line adds them up.
awk -v code="$code" '
  match($0, /<Counters [^>]*>/) {
    line = substr($0, RSTART, RLENGTH)
    total += field(line, "total"); executed += field(line, "executed"); passed += field(line, "passed")
  }
  function field(text, name,   at) {
    if (!match(text, " " name "=\"[0-9]+\"")) return 0
    at = substr(text, RSTART, RLENGTH); gsub(/[^0-9]/, "", at); return at + 0
  }
  END {
    failed = executed - passed; skipped = total - executed
    if (code != 0 && failed == 0) failed = 1
    tail = ""
    if (skipped > 0) tail = sprintf(", %d skipped", skipped)
    printf("%d passed, %d failed%s\n", passed, failed, tail)
    exit (failed > 0 || passed == 0) ? 1 : 0
  }' "${files[@]}" || code=1
exit "$code"
