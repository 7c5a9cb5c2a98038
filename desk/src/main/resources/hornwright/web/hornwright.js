// Small comforts only: every page works without this file.
