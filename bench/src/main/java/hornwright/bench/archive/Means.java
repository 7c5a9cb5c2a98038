package hornwright.bench.archive;

/** What stands behind an item, with the one mark that decides how far that kind can be trusted. */
public sealed interface Means {
    Kind kind();

    /** A horn in the hand. An unaltered part is one nobody has had reason to replace. */
    record Examined(Method method, boolean partUnaltered) implements Means {
        @Override
        public Kind kind() {
            return Kind.OBJECT;
        }
    }

    /** A paper of the time. */
    record Written(boolean byMaker) implements Means {
        @Override
        public Kind kind() {
            return Kind.DOCUMENT;
        }
    }

    /** A photograph or scan of an object. */
    record Pictured(boolean clearWithScale) implements Means {
        @Override
        public Kind kind() {
            return Kind.PHOTO;
        }
    }

    /** Somebody who was there, or who was told. */
    record Told(boolean recordedAndNamed) implements Means {
        @Override
        public Kind kind() {
            return Kind.TESTIMONY;
        }
    }

    /** A later book or article. */
    record Published(boolean citesItsSources) implements Means {
        @Override
        public Kind kind() {
            return Kind.LITERATURE;
        }
    }

    /** An advertisement, a forum, "they say". */
    record Rumoured() implements Means {
        @Override
        public Kind kind() {
            return Kind.HEARSAY;
        }
    }
}
