package hornwright.desk.web;

/** Says in one sentence why something was not done. */
public record RefusalPage(Frame frame, int status, String sentence) {}
