package hornwright.desk.message;

import org.jspecify.annotations.Nullable;

/** What templates call for their words: the texts of the language the page is being written in. */
public final class Say {
    private static final Messages ENGLISH = Messages.english();
    private static final ScopedValue<Messages> SPOKEN = ScopedValue.newInstance();

    private Say() {}

    /** The text of that key in the language of the page, its parts put in. */
    public static String say(String key, @Nullable Object... parts) {
        return SPOKEN.orElse(ENGLISH).say(key, parts);
    }

    /** The language of the page, as HTML names it. */
    public static String language() {
        return SPOKEN.orElse(ENGLISH).tag();
    }

    /** Writes a page in those texts. */
    public static void in(Messages texts, Runnable page) {
        ScopedValue.where(SPOKEN, texts).run(page);
    }
}
