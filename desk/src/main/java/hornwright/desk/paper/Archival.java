package hornwright.desk.paper;

/** How much of the archival standards a sheet keeps. */
public enum Archival {
    /** PDF/A-2b: looks the same in fifty years; for bench papers. */
    VISUAL,
    /** PDF/A-2a and PDF/UA-1: also readable aloud; for what an owner takes home. */
    ACCESSIBLE
}
