#!/bin/sh
# Gates for the package: what Calc would drop or fail on without a word stops the build here.
#   check.sh undercroft.oxt XUC.idl    the package, and the interface that its type library was made from
set -eu
oxt=$1
idl=$2
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
(cd "$folder" && cmake -E tar xf "$oxt")

fail() { echo "undercroft.oxt: $1" >&2; exit 1; }

# Every path of the manifest is in the package, and nothing is listed twice.
sed -n 's/.*full-path="\([^"]*\)".*/\1/p' "$folder/META-INF/manifest.xml" > "$folder/listed"
[ -s "$folder/listed" ] || fail "the manifest lists nothing"
while read -r path; do
  [ -e "$folder/$path" ] || fail "the manifest lists $path, which is not in the package"
done < "$folder/listed"
[ -z "$(sort "$folder/listed" | uniq -d)" ] || fail "the manifest lists a path twice"

# The library needs what every office has, and no more.
needed=$(readelf -d "$folder/libundercroft.so" | sed -n 's/.*(NEEDED).*\[\(.*\)\].*/\1/p')
[ -n "$needed" ] || fail "the library's needs cannot be read"
for library in $needed; do
  case $library in
    libuno_sal.so.3|libuno_cppu.so.3|libuno_cppuhelpergcc3.so.3|libstdc++.so.6|libgcc_s.so.1|libc.so.6|libm.so.6|ld-linux-*) ;;
    *) fail "the library needs $library" ;;
  esac
done

# Hardened: no place to look for libraries of its own, addresses resolved at once and then read-only, no executable
# stack, guarded stacks; and nothing called that opens a file, a socket or another program.
if readelf -d "$folder/libundercroft.so" | grep -qE '\((RPATH|RUNPATH|TEXTREL)\)'; then fail "the library has a path or relocations in its code"; fi
readelf -d "$folder/libundercroft.so" | grep -q 'BIND_NOW' || fail "the library is linked lazily"
readelf -lW "$folder/libundercroft.so" | grep -q 'GNU_RELRO' || fail "the library's tables stay writable"
readelf -lW "$folder/libundercroft.so" | awk '/GNU_STACK/ && / RW /' | grep -q . || fail "the library's stack is executable"
used=$(nm -D --undefined-only "$folder/libundercroft.so" | awk '{ sub(/@.*/, "", $2); print $2 }')
printf '%s\n' "$used" | grep -qx '__stack_chk_fail' || fail "the library's stacks are not guarded"
reaching='fopen|fopen64|open|open64|openat|creat|socket|connect|bind|system|popen|exec.*|fork|posix_spawn.*|dlopen|time|clock_gettime|gettimeofday|osl_openFile|osl_createPipe|osl_executeProcess'
reached=$(printf '%s\n' "$used" | grep -xE "$reaching" || true)
[ -z "$reached" ] || fail "the library calls $reached"
case $(find "$folder" -name '*.xlb' -o -name '*.xba' -o -name '*.py') in ?*) fail "the package brings a macro" ;; esac

# Only the entry points that the package registers are exported.
exported=$(nm -D --defined-only "$folder/libundercroft.so" | awk '$2 ~ /[TDBRV]/ {print $3}' | sort)
registered=$(sed -n 's/.*constructor="\([a-z_]*\)".*/\1/p' "$folder/undercroft.components" | sort)
[ -n "$registered" ] && [ "$exported" = "$registered" ] || fail "the library exports: $exported"

# Every template of the menu and every image is in the package.
sed -n 's|.*<value>undercroft:new/\(.*\)</value>.*|template/Undercroft/\1.ots|p' "$folder/Addons.xcu" > "$folder/named"
sed -n 's|.*<value>%origin%/\(.*\)</value>.*|\1|p' "$folder/Addons.xcu" >> "$folder/named"
[ -s "$folder/named" ] || fail "the menu opens no template"
while read -r path; do
  [ -e "$folder/$path" ] || fail "the menu names $path, which is not in the package"
done < "$folder/named"
for path in "$folder"/template/Undercroft/*.ots; do
  grep -qxF "template/Undercroft/${path##*/}" "$folder/named" || fail "the menu does not open ${path##*/}"
done

# Every function and argument in the registration has the name that the interface gives it: else its help shows ###. The
# document that some functions are handed is none of their arguments to Calc.
awk '/\[in\] |\(\);/ && match($0, /any [A-Za-z0-9]+\(/) {
  line = substr($0, RSTART + 4, RLENGTH - 5)
  rest = substr($0, RSTART + RLENGTH)
  while (match(rest, /\[in\] [A-Za-z:]+ [A-Za-z0-9]+/)) {
    split(substr(rest, RSTART, RLENGTH), word, " ")
    if (word[2] !~ /XPropertySet$/) line = line " " word[3]
    rest = substr(rest, RSTART + RLENGTH)
  }
  print line
}' "$idl" > "$folder/interface"
awk -F '"' '/^  <node oor:name=/ { if (line != "") print line; line = $2 }
  /^      <node oor:name=/ { line = line " " $2 }
  END { print line }' "$folder/CalcAddIns.xcu" > "$folder/registration"
[ -s "$folder/interface" ] || fail "the interface $idl has no function"
different=$(diff "$folder/interface" "$folder/registration" || true)
[ -z "$different" ] || fail "the registration (>) does not name its arguments as the interface (<):
$different"
