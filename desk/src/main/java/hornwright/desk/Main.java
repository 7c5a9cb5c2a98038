package hornwright.desk;

import hornwright.desk.cli.Hornwright;
import hornwright.desk.cli.Streams;
import hornwright.desk.use.Ahead;

/** Starts the program. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        if (args.length == 0 || args[0].equals("serve")) {
            Ahead.loadDatabase();
        }
        int code = Hornwright.run(Streams.system(), RunningShop::start, args);
        System.out.flush();
        if (code >= 0) {
            System.exit(code);
        }
    }
}
