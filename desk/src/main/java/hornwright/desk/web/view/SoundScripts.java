package hornwright.desk.web.view;

/** Addresses of the script that records and of the part of it that runs beside the sound. */
public record SoundScripts(String listen, String ear) {}
