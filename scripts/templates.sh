# Sourced: prints what Maven needs to be told when every page template is older than the code generated from it.

templates_flag() {
  local generated="$1/desk/target/generated-sources/jte/hornwright/desk/templates/JteframeGenerated.java"
  if [ -f "$generated" ] && [ -z "$(find "$1/desk/src/main/jte" "$1/pom.xml" "$1/desk/pom.xml" -newer "$generated" -print 2>/dev/null | head -n 1)" ]; then
    printf '%s' -Dtemplates.phase=none
  fi
}
