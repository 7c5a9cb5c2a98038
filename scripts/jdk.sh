# Sourced: find_jdk prints the home of the first JDK that is 25 or later, or fails.

is_25_or_later() {
  [ -x "$1/bin/javac" ] && [ -r "$1/release" ] || return 1
  local major
  major=$(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release")
  [ -n "$major" ] && [ "$major" -ge 25 ]
}

find_jdk() {
  local on_path="" candidate
  if command -v javac >/dev/null 2>&1; then
    on_path=$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")
  fi
  for candidate in "${HORNWRIGHT_JAVA_HOME:-}" "${JAVA_HOME:-}" "$on_path" \
      /usr/lib/jvm/*25* /usr/lib/jvm/* /opt/*jdk* /opt/java/* "$HOME"/.jdks/* "$HOME"/.sdkman/candidates/java/* \
      /Library/Java/JavaVirtualMachines/*/Contents/Home; do
    if [ -n "$candidate" ] && is_25_or_later "$candidate"; then
      printf '%s' "$candidate"
      return 0
    fi
  done
  return 1
}

no_jdk="Hornwright needs a JDK 25 or later: install one (for example under /usr/lib/jvm), or point HORNWRIGHT_JAVA_HOME at it."
no_maven="Hornwright needs Maven to build itself: install it (on Debian: apt-get install maven) and run this again."
