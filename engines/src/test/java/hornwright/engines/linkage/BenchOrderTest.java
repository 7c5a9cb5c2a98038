package hornwright.engines.linkage;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.engines.linkage.Mechanism.Link;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BenchOrderTest {
    private static Link link(String driver, String follower) {
        return Trio.link(driver + ">" + follower, driver, 0.01, follower, 0.01);
    }

    @Test
    void what_a_key_drives_is_set_before_what_drives_that_key() {
        BenchOrder order =
                BenchOrder.of(List.of(link("d", "fs"), link("e", "fs"), link("fs", "bis"), link("a", "bis")));
        assertThat(order.links()).containsExactly("fs>bis", "d>fs", "e>fs", "a>bis");
        assertThat(order.circles()).isEmpty();
    }

    @Test
    void links_on_a_circle_stand_last_and_are_named() {
        BenchOrder order = BenchOrder.of(List.of(link("a", "b"), link("b", "c"), link("c", "b"), link("c", "d")));
        assertThat(order.links()).containsExactly("a>b", "c>d", "b>c", "c>b");
        assertThat(order.circles()).containsExactly("b>c", "c>b");
    }

    @Test
    void whatever_the_links_each_stands_once_and_after_all_it_waits_for() {
        Random random = new Random(51);
        for (int trial = 0; trial < 300; trial++) {
            List<Link> links = new ArrayList<>();
            for (int i = 0; i < random.nextInt(12); i++) {
                int driver = random.nextInt(8);
                int follower = (driver + 1 + random.nextInt(7)) % 8;
                links.add(Trio.link("l" + i, "k" + driver, 0.01, "k" + follower, 0.01));
            }
            BenchOrder order = BenchOrder.of(links);
            assertThat(order.links())
                    .containsExactlyInAnyOrderElementsOf(
                            links.stream().map(Link::id).toList());
            for (Link link : links) {
                for (Link before : links) {
                    boolean waits = before.driver().equals(link.follower());
                    if (waits
                            && !order.circles().contains(link.id())
                            && !order.circles().contains(before.id())) {
                        assertThat(order.links().indexOf(link.id()))
                                .isGreaterThan(order.links().indexOf(before.id()));
                    }
                }
            }
        }
    }
}
