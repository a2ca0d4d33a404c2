#!/bin/sh
# Audits a workbook cell by cell, without a window: sh sheets/audit.sh FILE... [--against TEMPLATE] [--since OLD.ods]
# [--csv TABLE.csv] [--json ALL.json] [--out COPY.ods [--print PAGES.pdf]] [--seconds 120] [--memory 4]. The file under
# audit is never changed, outputs are written whole or not at all, and a signed copy is never written over. Exit status 0
# when nothing was found, 1 when something was, 2 when the audit could not be made.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
(cd "$root" && . tests/setup.sh && need_build) >&2 || exit 2
exec "$root/build/sheets/audit_file" "$root/build/extensions" "$@"
