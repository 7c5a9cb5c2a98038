package hornwright.desk;

import hornwright.desk.cli.Hornwright;
import hornwright.desk.cli.Streams;

/** Starts the program. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        int code = Hornwright.run(Streams.system(), RunningShop::start, args);
        System.out.flush();
        if (code >= 0) {
            System.exit(code);
        }
    }
}
