package hornwright.desk.reckon;

import hornwright.desk.json.Out;
import hornwright.engines.linkage.Conflict;
import hornwright.engines.linkage.Equilibrium.Side;
import hornwright.engines.linkage.LinkageResult;
import hornwright.engines.linkage.Mechanism;
import hornwright.engines.linkage.SetThickness;
import hornwright.engines.linkage.Yield;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes a linkage result in millimetres and newtons. */
record LinkageOut(Mechanism mechanism, LinkageResult result) {

    Out write() {
        return Out.object()
                .put("keys", keys())
                .put("cups", side(cups(), result.pressed().cups()))
                .put(
                        "stops",
                        side(
                                mechanism.stops().stream()
                                        .map(Mechanism.Stop::id)
                                        .toList(),
                                result.pressed().stops()))
                .put("links", side(links(), result.pressed().links()))
                .put("heights", heights())
                .put(
                        "set",
                        result.thicknesses().set().stream().map(LinkageOut::set).toList())
                .put("sensitivity", sensitivity())
                .putTexts("order", result.order().links())
                .putTexts("circles", result.order().circles())
                .put(
                        "conflicts",
                        result.thicknesses().conflicts().stream()
                                .map(LinkageOut::conflict)
                                .toList())
                .put("yield", yielded(result.yield()));
    }

    private List<String> cups() {
        return mechanism.cups().stream().map(Mechanism.Cup::id).toList();
    }

    private List<String> links() {
        return mechanism.links().stream().map(Mechanism.Link::id).toList();
    }

    private List<Out> keys() {
        List<Out> keys = new ArrayList<>();
        for (int i = 0; i < mechanism.keys().size(); i++) {
            keys.add(Out.object()
                    .put("id", mechanism.keys().get(i).id())
                    .put("rotation_rad", result.pressed().rotation()[i]));
        }
        return keys;
    }

    private static List<Out> side(List<String> ids, Side side) {
        List<Out> all = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            all.add(Out.object()
                    .put("id", ids.get(i))
                    .put("gap_mm", Unit.MM.of(side.gap()[i]))
                    .put("force_N", side.force()[i]));
        }
        return all;
    }

    private List<Out> heights() {
        List<Out> heights = new ArrayList<>();
        for (int i = 0; i < cups().size(); i++) {
            heights.add(Out.object()
                    .put("cup", cups().get(i))
                    .put("height_mm", Unit.MM.of(result.free().cups().gap()[i])));
        }
        return heights;
    }

    private static Out set(SetThickness set) {
        return Out.object()
                .put("link", set.link())
                .put("thickness_mm", Unit.MM.of(set.thickness()))
                .put("change_mm", Unit.MM.of(set.change()));
    }

    private List<Out> sensitivity() {
        List<Out> all = new ArrayList<>();
        for (int i = 0; i < links().size(); i++) {
            for (int j = 0; j < cups().size(); j++) {
                all.add(Out.object()
                        .put("link", links().get(i))
                        .put("cup", cups().get(j))
                        .put("gap_um_per_0.1mm", Unit.UM.of(result.sensitivity()[i][j])));
            }
        }
        return all;
    }

    private static Out conflict(Conflict conflict) {
        return Out.object()
                .put("link", conflict.link())
                .putTexts("press", conflict.presses())
                .put("least_mm", Unit.MM.of(conflict.least()))
                .put("most_mm", Unit.MM.of(conflict.most()));
    }

    private static @Nullable Out yielded(@Nullable Yield yield) {
        return yield == null
                ? null
                : Out.object()
                        .put("all_closed", yield.allClosed())
                        .put("worst_cup", yield.worstCup())
                        .put("gap_p95_um", Unit.UM.of(yield.gapP95()));
    }
}
