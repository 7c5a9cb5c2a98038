package hornwright.desk.web.feel;

import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.State;
import java.util.List;

/**
 * What the fingers feel. Question: is the action even, quiet and still?
 *
 * @param ticks of the scale of all needles, each with its place in per cent
 * @param weighed how many touches were weighed, in words
 */
public record FeelPage(
        Frame frame,
        Next next,
        String weighed,
        String weigh,
        List<Tick> ticks,
        List<Hand> hands,
        List<Balance> balances,
        List<Bounce> bounces) {
    public FeelPage {
        ticks = List.copyOf(ticks);
        hands = List.copyOf(hands);
        balances = List.copyOf(balances);
        bounces = List.copyOf(bounces);
    }

    public record Tick(String at, String label) {}

    /**
     * Touches that one hand compares; places along the needles are in per cent.
     *
     * @param least and {@code most} ends of what is usual
     * @param even what to say of their evenness; empty where that is no aim
     */
    public record Hand(
            String title,
            Figure least,
            Figure most,
            String from,
            String wide,
            List<Touch> touches,
            String even,
            List<Figure> evenness,
            List<String> changes,
            List<Figure> shares) {
        public Hand {
            touches = List.copyOf(touches);
            evenness = List.copyOf(evenness);
            changes = List.copyOf(changes);
            shares = List.copyOf(shares);
        }
    }

    /**
     * One touch as a needle with a pearl at its end.
     *
     * @param to where the pearl stands, {@code low} and {@code high} where its doubt ends
     * @param after where it would stand with the springs changed; empty if they are left
     * @param wires another wire in its place
     */
    public record Touch(
            String name,
            String address,
            Figure force,
            State state,
            boolean weighed,
            String to,
            String low,
            String high,
            String after,
            List<Figure> then,
            List<Wire> wires) {
        public Touch {
            then = List.copyOf(then);
            wires = List.copyOf(wires);
        }
    }

    /** A wire of another size: what the touch then asks for. */
    public record Wire(String size, Figure force) {}

    /** A pad held shut by a lever against its own spring. */
    public record Balance(
            String title, Figure held, Figure times, String verdict, List<String> touches, List<Try> tries) {
        public Balance {
            touches = List.copyOf(touches);
            tries = List.copyOf(tries);
        }
    }

    /**
     * Another spring tried.
     *
     * @param held empty when the pad would not be held at all
     * @param changes for each touch named above what changes; an empty list where nothing does
     */
    public record Try(String what, List<Figure> held, List<List<Figure>> changes) {
        public Try {
            held = List.copyOf(held);
            changes = List.copyOf(changes);
        }
    }

    /** One key let go: its curve as a path of a box 200 by 64, the stop at 12 from the top. */
    public record Bounce(String name, String address, String curve, State state, Figure rebound, Figure settled) {}
}
