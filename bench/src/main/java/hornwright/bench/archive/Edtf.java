package hornwright.bench.archive;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A date as far as it is known, in the Extended Date/Time Format, levels 0 and 1, without times of day: "1925", "1925~"
 * (about), "1925?" (uncertain), "1925%" (both), "192X", "1925-XX", "1924/1926", "1925/..", "/1926", "1925-21" (a season;
 * bounded by its year, since seasons differ by place), "Y-12000".
 *
 * <p>Source: ISO 8601-2:2019 and the Library of Congress EDTF text.
 *
 * @param earliest first day it can mean; null when open or unknown
 * @param latest last day it can mean; null when open or unknown
 */
public record Edtf(
        String text, @Nullable LocalDate earliest, @Nullable LocalDate latest, boolean uncertain, boolean approximate) {
    private static final Pattern DATE = Pattern.compile(
            "(?<year>-?(?:\\d{4}|\\d{3}X|\\d{2}XX|\\dXXX)|Y-?[1-9]\\d{4,8})(?:-(?<month>\\d{2}|XX)(?:-(?<day>\\d{2}|XX))?)?"
                    + "(?<mark>[?~%])?");
    private static final int FIRST_SEASON = 21;
    private static final int LAST_SEASON = 24;

    /** @throws IllegalArgumentException with a sentence saying what is wrong */
    public static Edtf parse(String text) {
        int slash = text.indexOf('/');
        if (slash < 0) {
            return single(text);
        }
        Edtf from = end(text.substring(0, slash), text);
        Edtf to = end(text.substring(slash + 1), text);
        if (from.earliest == null && to.latest == null) {
            throw wrong(text, "an interval needs at least one date");
        }
        if (from.earliest != null && to.latest != null && from.earliest.isAfter(to.latest)) {
            throw wrong(text, "the interval runs backwards");
        }
        return new Edtf(
                text, from.earliest, to.latest, from.uncertain || to.uncertain, from.approximate || to.approximate);
    }

    private static Edtf end(String part, String text) {
        if (part.isEmpty() || part.equals("..")) {
            return new Edtf(part, null, null, false, false);
        }
        if (part.indexOf('/') >= 0) {
            throw wrong(text, "an interval has two ends");
        }
        return single(part);
    }

    private static Edtf single(String text) {
        Matcher date = DATE.matcher(text);
        if (!date.matches()) {
            throw wrong(text, "write it like 1925, 1925~, 192X, 1925-03 or 1924/1926");
        }
        String mark = date.group("mark") == null ? "" : date.group("mark");
        boolean uncertain = mark.equals("?") || mark.equals("%");
        boolean approximate = mark.equals("~") || mark.equals("%");
        try {
            LocalDate[] days = days(date, text);
            return new Edtf(text, days[0], days[1], uncertain, approximate);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("'" + text + "' is not a date: there is no such day", e);
        }
    }

    private static LocalDate[] days(Matcher date, String text) {
        String year = date.group("year").replaceFirst("^Y", "");
        @Nullable String month = date.group("month");
        @Nullable String day = date.group("day");
        boolean backwards = year.startsWith("-");
        int lowest = Integer.parseInt(year.replace('X', backwards ? '9' : '0'));
        int highest = Integer.parseInt(year.replace('X', backwards ? '0' : '9'));
        if (month == null || isUnspecified(month)) {
            if (month != null && day != null && !isUnspecified(day)) {
                throw wrong(text, "a day without its month says nothing");
            }
            return new LocalDate[] {LocalDate.of(lowest, 1, 1), LocalDate.of(highest, Month.DECEMBER, 31)};
        }
        if (lowest != highest) {
            throw wrong(text, "a month needs its whole year");
        }
        int number = Integer.parseInt(month);
        if (number >= FIRST_SEASON && number <= LAST_SEASON && day == null) {
            return new LocalDate[] {LocalDate.of(lowest, 1, 1), LocalDate.of(lowest, Month.DECEMBER, 31)};
        }
        YearMonth whole = YearMonth.of(lowest, number);
        if (day == null || isUnspecified(day)) {
            return new LocalDate[] {whole.atDay(1), whole.atEndOfMonth()};
        }
        LocalDate exact = whole.atDay(Integer.parseInt(day));
        return new LocalDate[] {exact, exact};
    }

    private static boolean isUnspecified(String part) {
        return part.equals("XX");
    }

    private static IllegalArgumentException wrong(String text, String why) {
        return new IllegalArgumentException("'" + text + "' is not a date: " + why);
    }

    /** "about 1925", "1924 to 1926", "1925, uncertain". */
    public String inWords() {
        String about = approximate ? "about " : "";
        String doubt = uncertain ? ", uncertain" : "";
        return about + span() + doubt;
    }

    private String span() {
        if (text.indexOf('/') < 0) {
            return text.replaceFirst("[?~%]$", "").toLowerCase(Locale.ROOT).replace('x', '–');
        }
        String from = earliest == null ? "" : Integer.toString(earliest.getYear());
        String to = latest == null ? "" : Integer.toString(latest.getYear());
        if (from.isEmpty()) {
            return "not after " + to;
        }
        return to.isEmpty() ? from + " or later" : from + " to " + to;
    }
}
