package hornwright.desk.message;

/** What templates call for their words: the texts of the language the page is being written in. */
public final class Say {
    private static final Messages ENGLISH = new Messages("en");
    private static final ScopedValue<Messages> SPOKEN = ScopedValue.newInstance();

    private Say() {}

    /** The text of that key in the language of the page, its parts put in. */
    public static String say(String key, Object... parts) {
        return SPOKEN.orElse(ENGLISH).say(key, parts);
    }

    /** Writes a page in those texts. */
    public static void in(Messages texts, Runnable page) {
        ScopedValue.where(SPOKEN, texts).run(page);
    }
}
