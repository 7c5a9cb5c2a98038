package hornwright.desk.paper;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

/** The compiled templates of the sheets. */
final class PaperTemplates {
    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "hornwright.desk.templates");

    private PaperTemplates() {}

    static String render(String name, Object page) {
        StringOutput out = new StringOutput();
        ENGINE.render(name, page, out);
        return out.toString();
    }
}
