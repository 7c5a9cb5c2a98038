package hornwright.bench.horn.variant;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.LinkKind;
import java.util.List;

/** Side B flat and side C with lever and cup in one piece or two. */
final class SideLevers {
    private SideLevers() {}

    /** The contacts between a side lever and the side cup it opens; none when they are one piece. */
    static List<Link> contacts(Keywork horn) {
        return horn.links()
                .where(link -> link.kind() == LinkKind.OPENS
                        && horn.keys().get(link.driver()).group() == KeyGroup.SIDE
                        && horn.keys().get(link.follower()).group() == KeyGroup.SIDE);
    }

    static Keywork onePiece(Keywork horn) {
        Keywork joined = horn;
        for (Link contact : contacts(horn)) {
            joined = Join.over(joined, joined.links().get(contact.id()));
        }
        return joined;
    }
}
