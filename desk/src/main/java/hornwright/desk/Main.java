package hornwright.desk;

/** Starts the program. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.out.println(String.join(" ", args));
    }
}
