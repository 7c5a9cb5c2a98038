package hornwright.desk.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import hornwright.desk.message.Messages;
import hornwright.desk.message.Say;
import io.javalin.http.Context;

/** Renders a compiled template with its one model. */
public final class Templates {
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Templates.class.getClassLoader(), "hornwright.desk.templates");

    private final Messages texts;

    /** @param texts the language pages are written in */
    public Templates(Messages texts) {
        this.texts = texts;
    }

    Messages texts() {
        return texts;
    }

    void answer(Context context, String template, Object model) {
        context.contentType("text/html; charset=utf-8").result(text(template, model));
    }

    String text(String template, Object model) {
        StringOutput output = new StringOutput(16_384);
        Say.in(texts, () -> engine.render(template + ".jte", model, output));
        return output.toString();
    }
}
