# Shared by ./lapwright and ./test: finds or installs the tools, and builds. Sourced, not run.
# shellcheck shell=bash

version=0.1.0
target="$here/app/target"
stamp="$target/built"
build_log="$here/target/build.log"

say() { printf '%s\n' "$*" >&2; }

# major_of HOME: the feature version of the Java in HOME, or nothing. The release file is read rather than
# "java -version" run: that alone would cost a tenth of a second at every start.
java_version_of() { sed -n 's/^JAVA_VERSION="\([^"]*\)".*/\1/p' "$1/release" 2>/dev/null || true; }

major_of() {
  local full
  full=$(java_version_of "$1")
  full=${full#1.}
  printf '%s' "${full%%[.+-]*}"
}

java_homes() {
  [ -n "${LAPWRIGHT_JAVA_HOME:-}" ] && printf '%s\n' "$LAPWRIGHT_JAVA_HOME"
  [ -n "${JAVA_HOME:-}" ] && printf '%s\n' "$JAVA_HOME"
  if command -v java >/dev/null; then
    dirname "$(dirname "$(readlink -f "$(command -v java)")")"
  fi
  if [ -x /usr/libexec/java_home ]; then /usr/libexec/java_home -v 17+ 2>/dev/null || true; fi
  ls -d /usr/lib/jvm/*/ /usr/java/*/ /opt/java/*/ 2>/dev/null || true
}

find_java() {
  local home major
  while IFS= read -r home; do
    home=${home%/}
    [ -x "$home/bin/java" ] || continue
    major=$(major_of "$home")
    case "$major" in '' | *[!0-9]*) continue ;; esac
    if [ "$major" -ge 17 ]; then
      java_home=$home java_major=$major java_version=$(java_version_of "$home")
      [ -x "$home/bin/javac" ] && return 0
    fi
  done < <(java_homes)
  [ -n "${java_home:-}" ]
}

# install PACKAGE …: from Debian's packages where that can be done without asking, else says what to do.
install() {
  if ! command -v apt-get >/dev/null; then
    say "Lapwright: please install $* with your system's package manager, then run this again."
    exit 3
  fi
  if [ "$(id -u)" -ne 0 ]; then
    say "Lapwright: $* is missing. Please run:  sudo apt-get install $*"
    exit 3
  fi
  say "Installing $* …"
  { apt-get update -q && DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "$@"; } \
    >>"$here/target/install.log" 2>&1 || {
    say "Lapwright: $* could not be installed; the reason is at the end of target/install.log."
    exit 3
  }
}

need_java() {
  mkdir -p "$here/target"
  if ! find_java; then
    say "Lapwright needs Java 17 or newer, and none was found."
    install openjdk-17-jdk-headless
    find_java || { say "Lapwright: Java was installed but cannot be found; set LAPWRIGHT_JAVA_HOME."; exit 3; }
  fi
}

need_maven() {
  if [ ! -x "$java_home/bin/javac" ]; then
    say "Lapwright: building needs a JDK; $java_home can only run."
    install openjdk-17-jdk-headless
    find_java
  fi
  command -v mvn >/dev/null || install maven
}

needs_build() {
  [ -f "$stamp" ] || return 0
  [ -n "$(find "$here/pom.xml" "$here/core/pom.xml" "$here/core/src/main" "$here/app/pom.xml" "$here/app/src/main" \
    -newer "$stamp" -print 2>/dev/null | head -n 1)" ]
}

# Shows that something goes on: a line that moves on a terminal, dots elsewhere.
wait_for() {
  local pid=$1 seconds=0
  while kill -0 "$pid" 2>/dev/null; do
    sleep 1
    seconds=$((seconds + 1))
    if [ -t 2 ]; then printf '\r  %3d s' "$seconds" >&2; elif [ $((seconds % 10)) -eq 0 ]; then printf '.' >&2; fi
  done
  if [ -t 2 ]; then printf '\r         \r' >&2; elif [ "$seconds" -ge 10 ]; then printf '\n' >&2; fi
  wait "$pid"
}

build_app() {
  if [ -d "$HOME/.m2/repository/io/javalin" ]; then
    say "Building Lapwright …"
  else
    say "Building Lapwright for the first time; it fetches libraries, which takes a few minutes …"
  fi
  mkdir -p "$here/target"
  (cd "$here" && JAVA_HOME="$java_home" mvn -B -q -Dquick -DskipTests -Dmaven.test.skip=true -pl core,app package) \
    >"$build_log" 2>&1 &
  if ! wait_for $!; then
    say "Lapwright could not be built. The end of target/build.log:"
    tail -n 15 "$build_log" >&2
    exit 3
  fi
  rehearse
  touch "$stamp"
}

# One run of what a start does, so that the next start finds the classes ready. Only a matter of speed: where it fails,
# the next start is slower by half a second and nothing else.
rehearse() {
  rm -f "$target"/lapwright-*.jsa
  (
    "$java_home/bin/java" -XX:ArchiveClassesAtExit="$target/lapwright-$java_version.jsa" -XX:+UseSerialGC -Xlog:disable \
      -XX:ErrorFile="$here/target/rehearsal-%p.log" -jar "$target/lapwright-app-$version.jar" rehearse
  ) >>"$build_log" 2>&1 || echo "the rehearsal failed; starts will be slower" >>"$build_log"
}
