package hornwright.bench.horn;

import java.util.List;

/** Sets, holds, states, clearances and fingerings must speak of what is there. */
final class UseCheck {
    private final Keywork keywork;
    private final Flaws flaws;

    private UseCheck(Keywork keywork, Flaws flaws) {
        this.keywork = keywork;
        this.flaws = flaws;
    }

    static void look(Keywork keywork, Flaws flaws) {
        UseCheck check = new UseCheck(keywork, flaws);
        check.sets();
        check.octaveStates();
        check.lowTable();
        check.fingerings();
    }

    private void sets() {
        for (int i = 0; i < keywork.sets().size(); i++) {
            ClosingSet set = keywork.sets().get(i);
            flaws.unlessKnown(keywork.keys(), set.press(), "key", "/sets/" + i + "/press");
            all(keywork.cups(), set.closes(), "cup", "/sets/" + i + "/closes");
        }
        for (int i = 0; i < keywork.holds().size(); i++) {
            Hold hold = keywork.holds().get(i);
            flaws.unlessKnown(keywork.keys(), hold.press(), "key", "/holds/" + i + "/press");
            all(keywork.cups(), hold.holds(), "cup", "/holds/" + i + "/holds");
            if (hold.whileReleased() != null) {
                flaws.unlessKnown(keywork.keys(), hold.whileReleased(), "key", "/holds/" + i + "/whileReleased");
            }
        }
        for (int i = 0; i < keywork.linkedSets().size(); i++) {
            all(keywork.cups(), keywork.linkedSets().get(i).cups(), "cup", "/linkedSets/" + i + "/cups");
        }
    }

    private void octaveStates() {
        for (int i = 0; i < keywork.octaveStates().size(); i++) {
            OctaveState state = keywork.octaveStates().get(i);
            String at = "/octaveStates/" + i;
            all(keywork.keys(), state.pressed(), "key", at + "/pressed");
            clearances(state.clearances(), at + "/clearances");
            String vent = state.openVent();
            if (vent != null
                    && keywork.holes().find(vent).filter(ToneHole::octaveVent).isEmpty()) {
                flaws.add(at + "/openVent", "\"" + vent + "\" is no octave vent", "\"neck-octave\"");
            }
        }
    }

    private void lowTable() {
        LowTable table = keywork.lowTable();
        clearances(table.gSharpTabs(), "/lowTable/gSharpTabs");
        tableClearances(table.cSharpHoldDown(), "/lowTable/cSharpHoldDown");
        tableClearances(table.bFlatOverB(), "/lowTable/bFlatOverB");
        for (int i = 0; i < table.rollers().size(); i++) {
            String roller = table.rollers().get(i);
            if (keywork.places()
                    .find(roller)
                    .filter(p -> p.kind() == PlaceKind.ROLLER)
                    .isEmpty()) {
                flaws.add("/lowTable/rollers/" + i, "\"" + roller + "\" is no roller", "\"roller.table-b\"");
            }
        }
    }

    private void fingerings() {
        for (int i = 0; i < keywork.fingerings().size(); i++) {
            Fingering fingering = keywork.fingerings().list().get(i);
            all(keywork.holes(), fingering.open(), "hole", "/fingerings/" + i + "/open");
        }
    }

    private void clearances(List<Clearance> all, String at) {
        for (int i = 0; i < all.size(); i++) {
            flaws.unlessKnown(keywork.links(), all.get(i).link(), "link", at + "/" + i + "/link");
        }
    }

    private void tableClearances(List<TableClearance> all, String at) {
        for (int i = 0; i < all.size(); i++) {
            flaws.unlessKnown(keywork.links(), all.get(i).link(), "link", at + "/" + i + "/link");
        }
    }

    private void all(ById<?> known, List<String> ids, String kind, String at) {
        for (int i = 0; i < ids.size(); i++) {
            flaws.unlessKnown(known, ids.get(i), kind, at + "/" + i);
        }
    }
}
