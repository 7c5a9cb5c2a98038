package hornwright.bench.archive;

/** Why one contradicting item is set aside: a written, signed and dated reason. The item stays visible. */
public record Resolution(String evidence, String reason, String who, Edtf when) {
    public Resolution {
        if (reason.isBlank() || who.isBlank()) {
            throw new IllegalArgumentException("a resolution needs a written reason and a name");
        }
    }
}
