package hornwright.desk.web.view;

/** Says in one sentence why something was not done. */
public record RefusalPage(Frame frame, int status, String sentence) {}
