package hornwright.engines.belief;

/** How a serial number stands to those that were looked at. */
public enum Standing {
    /** This very serial was seen. */
    OBSERVED,
    /** It lies between two that were seen. */
    INTERPOLATED,
    /** It lies beyond all that were seen, or nothing was seen at all. */
    EXTRAPOLATED
}
