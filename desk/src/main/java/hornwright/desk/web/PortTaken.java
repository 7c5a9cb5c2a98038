package hornwright.desk.web;

/** Another program already answers on that port. */
public final class PortTaken extends Exception {
    PortTaken(int port) {
        super("Port %d is taken by another program; give one that is free, like --port %d, or 0 for any."
                .formatted(port, port == 65_535 ? 8421 : port + 1));
    }
}
