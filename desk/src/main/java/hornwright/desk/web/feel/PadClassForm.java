package hornwright.desk.web.feel;

import hornwright.bench.survey.Decision;
import hornwright.bench.survey.PadClass;
import hornwright.desk.use.Decide;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.OnBench;
import io.javalin.http.Context;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Settles how readily a pad, or every pad of a horn, gives. */
public record PadClassForm(Desk desk) {
    private static final int LONGEST_WHY = 200;

    /** @param cup null for the whole horn */
    public void settle(Context context, OnBench bench, @Nullable String cup) {
        if (!Desk.field(context, "back").isEmpty()) {
            String about = cup == null ? "pad-class" : "pad-class." + cup;
            Desk.kept(new Decide(desk.shop()).takeBack(bench.id(), Desk.form(context), about));
            return;
        }
        String word = Desk.field(context, "padClass");
        PadClass chosen = Arrays.stream(PadClass.values())
                .filter(one -> one.name().equals(word))
                .findFirst()
                .orElseThrow(() -> new Refusal(422, "Choose soft, medium or firm."));
        String why = Desk.field(context, "why");
        if (why.length() > LONGEST_WHY) {
            throw new Refusal(422, "A reason holds 200 letters; this one is longer.");
        }
        Decision decision = new Decision.PadSoftness(cup, chosen, why.isEmpty() ? "chosen at the bench" : why);
        Desk.kept(new Decide(desk.shop()).decide(bench.id(), Desk.form(context), decision));
    }
}
