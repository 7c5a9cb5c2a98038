package hornwright.desk.virtual;

import hornwright.desk.keyworkfile.KeyworkFile;

/** A few horns of the tuning seeds, printed. */
final class Tune {
    public static void main(String[] args) {
        for (String v : new String[] {"alto", "tenor"}) {
            Campaign.of(KeyworkFile.shipped("tarrant-loe-" + v).orElseThrow(), 1, Integer.parseInt(args[0]))
                    .print();
            if (args.length > 1) {
                Limits.of(KeyworkFile.shipped("tarrant-loe-" + v).orElseThrow(), 1, Integer.parseInt(args[0]))
                        .print();
            }
        }
    }
}
