package hornwright.engines.linkage;

import hornwright.engines.linkage.Mechanism.Cup;
import hornwright.engines.linkage.Mechanism.Link;
import hornwright.engines.linkage.Mechanism.Stop;

/**
 * All contacts as rows of numbers: gap = arm1 q[key1] + arm2 q[key2] + free, force = stiffness × max(0, -gap). Cups come
 * first, then stops, then links. A cup on a key that twists gives way twice, so its row carries the softer stiffness of
 * pad and shaft in series and the gap it would have on a stiff shaft.
 */
final class Contacts {
    final int cups;
    final int stops;
    final int links;
    final int[] key1;
    final int[] key2;
    final double[] arm1;
    final double[] arm2;
    final double[] free;
    final double[] stiffness;
    private final double[] padStiffness;
    private final double[] flex;
    private final double[] signs;

    private Contacts(int cups, int stops, int links) {
        this.cups = cups;
        this.stops = stops;
        this.links = links;
        int all = cups + stops + links;
        key1 = new int[all];
        key2 = new int[all];
        arm1 = new double[all];
        arm2 = new double[all];
        free = new double[all];
        stiffness = new double[all];
        signs = new double[all];
        padStiffness = new double[cups];
        flex = new double[cups];
    }

    static Contacts of(Mechanism mechanism) {
        Contacts contacts = new Contacts(
                mechanism.cups().size(),
                mechanism.stops().size(),
                mechanism.links().size());
        Index keys = mechanism.keyIndex();
        for (int i = 0; i < contacts.cups; i++) {
            Cup cup = mechanism.cups().get(i);
            int key = keys.of(cup.key());
            contacts.key1[i] = key;
            contacts.key2[i] = -1;
            contacts.padStiffness[i] = cup.stiffness();
            contacts.flex[i] = mechanism.keys().get(key).flex();
            contacts.cup(i, cup.arm(), cup.offset());
        }
        for (int i = 0; i < contacts.stops; i++) {
            Stop stop = mechanism.stops().get(i);
            int row = contacts.cups + i;
            contacts.key1[row] = keys.of(stop.key());
            contacts.key2[row] = -1;
            contacts.arm1[row] = stop.sign() * stop.arm();
            contacts.stiffness[row] = stop.stiffness();
            contacts.stop(i, stop.clearance() - stop.thickness());
        }
        for (int i = 0; i < contacts.links; i++) {
            Link link = mechanism.links().get(i);
            int row = contacts.cups + contacts.stops + i;
            contacts.key1[row] = keys.of(link.driver());
            contacts.key2[row] = keys.of(link.follower());
            contacts.signs[row] = -link.sense().sign();
            contacts.stiffness[row] = link.stiffness();
            contacts.link(i, link.space() - link.thickness(), link.driverArm(), link.followerArm());
        }
        return contacts;
    }

    Contacts copy() {
        Contacts copy = new Contacts(cups, stops, links);
        System.arraycopy(key1, 0, copy.key1, 0, size());
        System.arraycopy(key2, 0, copy.key2, 0, size());
        System.arraycopy(arm1, 0, copy.arm1, 0, size());
        System.arraycopy(arm2, 0, copy.arm2, 0, size());
        System.arraycopy(free, 0, copy.free, 0, size());
        System.arraycopy(stiffness, 0, copy.stiffness, 0, size());
        System.arraycopy(signs, 0, copy.signs, 0, size());
        System.arraycopy(padStiffness, 0, copy.padStiffness, 0, cups);
        System.arraycopy(flex, 0, copy.flex, 0, cups);
        return copy;
    }

    int size() {
        return key1.length;
    }

    int linkRow(int link) {
        return cups + stops + link;
    }

    void cup(int cup, double arm, double offset) {
        arm1[cup] = arm;
        free[cup] = offset;
        stiffness[cup] = padStiffness[cup] / (1 + padStiffness[cup] * flex[cup] * arm * arm);
    }

    void stop(int stop, double clear) {
        free[cups + stop] = clear;
    }

    void link(int link, double clear, double driverArm, double followerArm) {
        int row = linkRow(link);
        free[row] = clear;
        arm1[row] = driverArm;
        arm2[row] = signs[row] * followerArm;
    }

    /** Gap of a row on stiff shafts. */
    double stiffGap(int row, double[] rotation) {
        double gap = arm1[row] * rotation[key1[row]] + free[row];
        return key2[row] < 0 ? gap : gap + arm2[row] * rotation[key2[row]];
    }

    double force(int row, double[] rotation) {
        return stiffness[row] * Math.max(0, -stiffGap(row, rotation));
    }

    /** Gap as a feeler would find it: under load only the pad's own give counts, not the twist of the key. */
    double gap(int row, double[] rotation) {
        double gap = stiffGap(row, rotation);
        return row < cups && gap < 0 ? gap * stiffness[row] / padStiffness[row] : gap;
    }

    /** How the gap a feeler would find changes as the keys turn by {@code turning}. */
    double gapSlope(int row, double[] rotation, double[] turning) {
        double slope = arm1[row] * turning[key1[row]];
        if (key2[row] >= 0) {
            slope += arm2[row] * turning[key2[row]];
        }
        return row < cups && stiffGap(row, rotation) < 0 ? slope * stiffness[row] / padStiffness[row] : slope;
    }
}
