package hornwright.desk.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;

/** Renders a compiled template with its one model. */
final class Templates {
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Templates.class.getClassLoader(), "hornwright.desk.templates");

    void answer(Context context, String template, Object model) {
        context.contentType("text/html; charset=utf-8").result(text(template, model));
    }

    String text(String template, Object model) {
        StringOutput output = new StringOutput(16_384);
        engine.render(template + ".jte", model, output);
        return output.toString();
    }
}
