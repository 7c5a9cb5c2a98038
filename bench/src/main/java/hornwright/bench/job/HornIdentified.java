package hornwright.bench.job;

/** Which horn it is, put right: maker, voice, serial, variants and the keywork it is planned by. */
@Kind(word = "horn-identified")
public record HornIdentified(Identity identity) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("identity");
    }

    @Override
    public String inWords() {
        return "identified as " + identity.inWords();
    }
}
