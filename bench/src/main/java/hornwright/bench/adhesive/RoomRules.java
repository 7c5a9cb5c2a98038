package hornwright.bench.adhesive;

import java.util.List;

/** What holds in the room whatever is done there: the usual cautions, no rule of law. */
public final class RoomRules {
    private RoomRules() {}

    public static List<String> all() {
        return List.of(
                "Flame and solvent are never open in one room. An alcohol flame can hardly be seen; an extinguisher hangs within"
                        + " reach.",
                "A warm cup burns fingers and scorches old lacquer: long palm keys to learn on, short passes, springs out first.",
                "Ketones, thinners, naphtha and alcohol burn and dry the skin: small open amounts, ventilation, gloves, eyes"
                        + " covered, lids on.",
                "Strippers with methylene chloride go through common gloves and are banned in many places: not here.",
                "Acid pickles, cyanide baths and plating go to a licensed plater; acid and cyanide never meet.",
                "Old solder and some brass hold lead: no dry sanding, wet cleaning, hands washed, nothing to eat at the bench.",
                "Felt, leather, buffing dust, mould and old case dust: mask and extraction; an old case may hold insecticide.",
                "Nickel silver and nickel plate can set off an allergy: gloves, and the owner is told.",
                "Chemical cleaning is rinsed and neutralised; not on soldered or doubtfully plated parts, not on a horn kept for"
                        + " display.",
                "Needle springs stab and cut ends fly: eyes covered, the end caught.",
                "What touched a mouth is disinfected before it is tried for air; nobody sucks hard on a sharp neck end.",
                "Glue pots, lamps and irons are unplugged before anybody leaves.");
    }
}
