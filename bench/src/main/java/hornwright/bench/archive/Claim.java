package hornwright.bench.archive;

/** "On horns with these serials, this place left the factory with this material." */
public record Claim(SerialRange serials, String place, String material) {
    /** "foot.d of 41207: natural cork". */
    public String inWords() {
        return place + " of " + serials.inWords() + ": " + material;
    }
}
