package hornwright.desk.paper;

/**
 * What stands at the head of every sheet of one horn.
 *
 * @param title the horn, as the shop calls it: "Tarrant & Loe alto"
 * @param line number, shop and day: "Serial 41207 · Quayside Winds · 25 November 2026"
 */
public record SheetHead(String title, String line) {}
