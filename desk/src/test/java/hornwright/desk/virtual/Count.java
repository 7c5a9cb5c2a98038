package hornwright.desk.virtual;

/** What one way of working came to over many horns. */
final class Count {
    private int horns;
    private int pads;
    private int heats;
    private int padReworks;
    private int atOnce;
    private int sealed;
    private double padMinutes;
    private int wholeAtOne;
    private int feet;
    private int passes;
    private int footReworks;
    private double footMinutes;
    private double firstSquare;
    private double lastSquare;

    void add(VirtualHorn horn, Ways way, Hand hand, Instruments with) {
        horns++;
        boolean all = true;
        for (VirtualCup cup : horn.cups()) {
            Padding.Padded done = Padding.pad(horn, cup, way.pad(cup), hand);
            pads++;
            heats += done.heats();
            padReworks += done.reworks();
            atOnce += done.atOnce() ? 1 : 0;
            sealed += done.seals() ? 1 : 0;
            padMinutes += done.minutes();
            all &= done.atMostOneCorrection();
            if (!cup.layers().isEmpty()) {
                foot(Footing.foot(horn, cup, way.foot(cup), with));
            }
        }
        wholeAtOne += all ? 1 : 0;
    }

    private void foot(Footing.Footed done) {
        feet++;
        passes += done.passes();
        footReworks += done.reworks();
        footMinutes += done.minutes();
        firstSquare += done.first() * done.first();
        lastSquare += done.off() * done.off();
    }

    double heatsAPad() {
        return heats / (double) pads;
    }

    double reworksAHorn() {
        return (padReworks + footReworks) / (double) horns;
    }

    double wholeAtOne() {
        return wholeAtOne / (double) horns;
    }

    double sealed() {
        return sealed / (double) pads;
    }

    void print(String title) {
        System.out.printf(
                "%-26s pads: at once %.3f, heats %.3f, min %.2f, out again %.2f a horn, sealed %.4f, whole at <=1 %.3f"
                        + " | feet: passes %.2f, again %.2f a horn, min %.2f, first rms %.2f, last rms %.2f%n",
                title,
                atOnce / (double) pads,
                heatsAPad(),
                padMinutes / pads,
                padReworks / (double) horns,
                sealed(),
                wholeAtOne(),
                passes / (double) feet,
                footReworks / (double) horns,
                footMinutes / feet,
                Math.sqrt(firstSquare / feet),
                Math.sqrt(lastSquare / feet));
    }
}
