package hornwright.desk.web.plan;

import hornwright.desk.web.view.Frame;

/** Why one number is so. Question: what was it made of, and can I trust it? */
public record BecausePage(Frame frame, Reasons reasons, String back) {}
