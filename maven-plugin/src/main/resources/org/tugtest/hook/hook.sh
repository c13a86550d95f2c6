#!/bin/sh
# tugtest-guard: keeps commits that break a harness from happening
# Made by the goal install-hook, taken away by remove-hook.
[ "$TUGTEST_GUARD" != "$PWD" ] || exit 0
TUGTEST_GUARD=$PWD
export TUGTEST_GUARD

# A hook that was here before comes first.
case $0 in */*) here=${0%/*} ;; *) here=. ;; esac
kept=$here/${0##*/}.before-tugtest
if [ -x "$kept" ]; then
  "$kept" "$@" || exit $?
fi

# Most commits touch no harness.
git --literal-pathspecs diff --cached --quiet -- @folders@ && exit 0

# The Java that the guard was installed with, else another one that is new enough.
guard=$(cd "$here/tugtest" 2>/dev/null && pwd -P)
java=@java@
if [ ! -x "$java" ]; then
  java=${JAVA_HOME:+$JAVA_HOME/bin/java}
  [ -x "$java" ] || java=$(command -v java)
  version=$("${java:-false}" -version 2>&1 | sed -n 's/.* version "\([0-9]*\).*/\1/p')
  [ "${version:-0}" -ge 17 ] || java=
fi
if [ -n "$java" ] && [ -f "$guard/guard.jar" ]; then
  exec "$java" -XX:+IgnoreUnrecognizedVMOptions -XX:+AutoCreateSharedArchive \
    -XX:SharedArchiveFile="$guard/guard.jsa" @jvm@ \
    -cp "$guard/guard.jar" @main@ \
    @arguments@
fi
if [ -n "$java" ] && command -v mvn >/dev/null; then
  exec mvn -o -q -N @plugin@:check -Dtugtest.staged=true -Dtugtest.failOnlyNew=true \
    -Dtugtest.outputDirectory="${guard:-$here}/report" @properties@
fi

echo "tugtest: this commit changes a harness and could not be checked:" >&2
echo "no Java of version 17 or later is found; set JAVA_HOME, or put java on the PATH" >&2
echo "(git commit --no-verify commits without the check; continuous integration still runs it)" >&2
exit 2
