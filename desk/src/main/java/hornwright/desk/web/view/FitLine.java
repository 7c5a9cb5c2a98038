package hornwright.desk.web.view;

import java.util.List;

/**
 * What is known of one part.
 *
 * @param id anchor of it on the page of all
 * @param part with its size: "needle spring, blued steel, 1.07 mm"
 * @param where which places, in words
 * @param serials the claim speaks of
 * @param counts "2 looks for it, 1 against, from 3 origins"
 * @param why each step of the grade
 * @param said who says so
 */
public record FitLine(
        String id,
        String kind,
        String part,
        String where,
        String serials,
        State grade,
        String counts,
        List<String> why,
        List<Said> said) {
    public FitLine {
        why = List.copyOf(why);
        said = List.copyOf(said);
    }

    /**
     * One voice, drawn as a bar along the serials.
     *
     * @param against whether it says that the part does not fit
     * @param left where its serials begin, in hundredths of the width
     * @param width at least a line
     */
    public record Said(String words, boolean against, double left, double width) {}
}
