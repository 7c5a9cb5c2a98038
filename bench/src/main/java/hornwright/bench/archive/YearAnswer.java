package hornwright.bench.archive;

/** What the table of years says of a serial: a year between two rows, or why it says none. */
public sealed interface YearAnswer {
    /** Without a full stop. */
    String inWords();

    /**
     * A year with its bracket.
     *
     * @param year by the curve through the rows; a guess within the bracket
     * @param from the row at or below the serial
     * @param to the row at or above it; the same row where the serial has one
     */
    record Found(long serial, int year, YearRow from, YearRow to) implements YearAnswer {
        public int earliest() {
            return from.earliest();
        }

        public int latest() {
            return to.latest();
        }

        @Override
        public String inWords() {
            String about = from.year().approximate() || to.year().approximate() ? "about " : "";
            if (earliest() == latest()) {
                return "%s%d, %s"
                        .formatted(about, year, from.equals(to) ? "by its own row" : "as the rows on both sides");
            }
            return "%s%d, between %s and %s"
                    .formatted(about, year, end(earliest(), from.year()), end(latest(), to.year()));
        }

        private static String end(int year, Edtf date) {
            return date.approximate() ? "about " + year : "" + year;
        }
    }

    /** The table does not reach the serial; nothing is extrapolated. */
    record Outside(long serial, boolean before, YearRow nearest) implements YearAnswer {
        @Override
        public String inWords() {
            return "%s the table's %s row: %s"
                    .formatted(before ? "before" : "after", before ? "first" : "last", nearest.inWords());
        }
    }

    /** A higher serial stands with an earlier year: one of the two rows is wrong, and the table tells no year. */
    record Backwards(YearRow lower, YearRow higher) implements YearAnswer {
        @Override
        public String inWords() {
            return "the table runs backwards: %s, but %s".formatted(lower.inWords(), higher.inWords());
        }
    }

    record Untold() implements YearAnswer {
        @Override
        public String inWords() {
            return "the table has no rows yet";
        }
    }
}
