package hornwright.desk.web.arrival;

import hornwright.bench.horn.Articulation;
import hornwright.bench.horn.BellKeySide;
import hornwright.bench.horn.OctaveLevers;
import hornwright.bench.horn.Pieces;
import hornwright.bench.horn.Switches;
import hornwright.bench.horn.Word;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.view.PlacePanel.Option;
import io.javalin.http.Context;
import java.util.List;
import java.util.stream.Stream;

/** What this horn has and lacks, as choices of a form. */
final class SwitchForm {
    private SwitchForm() {}

    static List<ArrivalPage.Choice> choices(Switches has) {
        return List.of(
                yesNo("sideFSharp", "Side F♯", has.sideFSharp()),
                yesNo("highFSharp", "High F♯", has.highFSharp()),
                yesNo("frontF", "Front F", has.frontF()),
                yesNo("forkedEFlat", "Forked E♭", has.forkedEFlat()),
                words("bellKeys", "Bell keys", BellKeySide.values(), has.bellKeys()),
                words("bellKeyPieces", "Bell keys made in", Pieces.values(), has.bellKeyPieces()),
                words("gSharp", "G♯", Articulation.values(), has.gSharp()),
                words("lowCSharp", "Low C♯", Articulation.values(), has.lowCSharp()),
                words("octaveLevers", "Octave levers", OctaveLevers.values(), has.octaveLevers()),
                words("sideLevers", "Side levers", Pieces.values(), has.sideLevers()));
    }

    static Switches read(Context context, Switches before) {
        return new Switches(
                yes(context, "sideFSharp", before.sideFSharp()),
                yes(context, "highFSharp", before.highFSharp()),
                yes(context, "frontF", before.frontF()),
                yes(context, "forkedEFlat", before.forkedEFlat()),
                word(context, "bellKeys", BellKeySide.values(), before.bellKeys()),
                word(context, "bellKeyPieces", Pieces.values(), before.bellKeyPieces()),
                word(context, "gSharp", Articulation.values(), before.gSharp()),
                word(context, "lowCSharp", Articulation.values(), before.lowCSharp()),
                word(context, "octaveLevers", OctaveLevers.values(), before.octaveLevers()),
                word(context, "sideLevers", Pieces.values(), before.sideLevers()));
    }

    private static ArrivalPage.Choice yesNo(String name, String label, boolean has) {
        return new ArrivalPage.Choice(
                name, label, List.of(new Option("yes", "yes", has), new Option("no", "no", !has)));
    }

    private static <E extends Word> ArrivalPage.Choice words(String name, String label, E[] all, E has) {
        return new ArrivalPage.Choice(
                name,
                label,
                Stream.of(all)
                        .map(one ->
                                new Option(one.word(), one.word(), one.word().equals(has.word())))
                        .toList());
    }

    private static boolean yes(Context context, String name, boolean otherwise) {
        String said = Desk.field(context, name);
        return said.isEmpty() ? otherwise : said.equals("yes");
    }

    private static <E extends Word> E word(Context context, String name, E[] all, E otherwise) {
        String said = Desk.field(context, name);
        return Stream.of(all).filter(one -> one.word().equals(said)).findFirst().orElse(otherwise);
    }
}
