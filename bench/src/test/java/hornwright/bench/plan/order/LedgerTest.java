package hornwright.bench.plan.order;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.steps.Progress;
import hornwright.bench.steps.Step;
import hornwright.bench.steps.StepState;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.Stage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The ledger against a reader of the whole log, who asks of every step what it was signed on and what was read since. */
class LedgerTest {
    private static final double LIMIT = 2;

    private enum Sort {
        SUITED,
        RESULT,
        JUDGED
    }

    /** Something that can be read, of one step. */
    private record Topic(String name, String step, Sort sort) {}

    private sealed interface Act {
        record Signed(String step, boolean changed) implements Act {}

        record Bent(String step) implements Act {}

        record Read(Topic topic, int value) implements Act {}

        record Lapsed(Topic topic) implements Act {}
    }

    @Test
    void nothing_signed_off_is_ever_silently_valid_and_nothing_valid_is_ever_asked_again() {
        Random random = new Random(21);
        int asked = 0;
        int good = 0;
        for (int round = 0; round < 400; round++) {
            WorkGraph graph = randomGraph(random, 2 + random.nextInt(14));
            List<Topic> topics = topics(random, graph);
            List<Act> log = new ArrayList<>();
            for (int act = 0; act < 70; act++) {
                log.add(anything(random, graph, topics));
            }
            Progress progress = Progress.after(graph, told(log));
            Reader reader = new Reader(log, topics);
            Map<String, Boolean> truly = new HashMap<>();
            for (Step step : graph.steps()) {
                boolean below = step.restsOn().stream().allMatch(id -> truly.getOrDefault(id, false));
                truly.put(step.id(), below && reader.holds(step));
                StepState state = progress.of(step.id());
                assertThat(state instanceof StepState.Good)
                        .as("round %d, %s of %s", round, step.id(), log)
                        .isEqualTo(truly.get(step.id()));
                asked += state instanceof StepState.Recheck ? 1 : 0;
                good += state instanceof StepState.Good ? 1 : 0;
            }
        }
        assertThat(asked).isGreaterThan(200);
        assertThat(good).isGreaterThan(200);
    }

    @Test
    void a_reading_asks_exactly_for_what_rests_on_its_step() {
        Random random = new Random(22);
        for (int round = 0; round < 300; round++) {
            WorkGraph graph = randomGraph(random, 2 + random.nextInt(30));
            String step =
                    graph.steps().get(random.nextInt(graph.steps().size())).id();
            List<Act> log = new ArrayList<>();
            graph.steps().forEach(each -> log.add(new Act.Signed(each.id(), true)));
            log.add(new Act.Read(new Topic("t", step, Sort.JUDGED), 5));
            Progress progress = Progress.after(graph, told(log));
            for (Step each : graph.steps()) {
                boolean rests =
                        each.id().equals(step) || graph.allRestingOn(step).contains(each.id());
                assertThat(progress.of(each.id()) instanceof StepState.Recheck).isEqualTo(rests);
            }
        }
    }

    private static List<hornwright.bench.steps.WorkEvent> told(List<Act> log) {
        Ledger ledger = new Ledger();
        for (int i = 0; i < log.size(); i++) {
            switch (log.get(i)) {
                case Act.Signed signed -> ledger.sign(signed.step(), signed.changed());
                case Act.Bent bent -> ledger.disturb(bent.step(), "bent");
                case Act.Read read ->
                    ledger.want(
                            read.topic().name(),
                            read.topic().step(),
                            wanted(read.topic().sort(), read.topic().name() + "@" + i, read.value()),
                            (is, was) -> "read");
                case Act.Lapsed lapsed ->
                    ledger.lapse(id -> id.startsWith(lapsed.topic().name() + "@"));
            }
        }
        return ledger.events();
    }

    private static Wanted wanted(Sort sort, String id, int value) {
        Wanted.Figure figure = new Wanted.Figure(id, null, value, 0, "" + value);
        return switch (sort) {
            case SUITED -> new Wanted.Suited(figure);
            case RESULT -> new Wanted.Result(figure);
            case JUDGED -> new Wanted.Judged(figure, LIMIT);
        };
    }

    private static Act anything(Random random, WorkGraph graph, List<Topic> topics) {
        String step = graph.steps().get(random.nextInt(graph.steps().size())).id();
        return switch (random.nextInt(topics.isEmpty() ? 5 : 12)) {
            case 0, 1, 2 -> new Act.Signed(step, random.nextBoolean());
            case 3 -> new Act.Signed(step, false);
            case 4 -> random.nextInt(3) == 0 ? new Act.Bent(step) : new Act.Signed(step, false);
            case 5 -> new Act.Lapsed(topics.get(random.nextInt(topics.size())));
            default -> new Act.Read(topics.get(random.nextInt(topics.size())), random.nextInt(6));
        };
    }

    private static List<Topic> topics(Random random, WorkGraph graph) {
        List<Topic> topics = new ArrayList<>();
        for (Step step : graph.steps()) {
            if (random.nextInt(3) == 0) {
                Sort sort = Sort.values()[random.nextInt(Sort.values().length)];
                topics.add(new Topic("t" + topics.size(), step.id(), sort));
            }
        }
        return topics;
    }

    /** Goes back through the log for every question and keeps no books. */
    private record Reader(List<Act> log, List<Topic> topics) {
        boolean holds(Step step) {
            int signed = before(log.size(), act -> signs(act, step.id()));
            return signed >= 0
                    && Stream.concat(Stream.of(step.id()), step.restsOn().stream())
                            .noneMatch(each -> isAnotherSince(each, signed));
        }

        private boolean isAnotherSince(String step, int since) {
            for (int i = since + 1; i < log.size(); i++) {
                boolean changed = switch (log.get(i)) {
                    case Act.Bent bent -> bent.step().equals(step);
                    case Act.Signed signed -> signed.step().equals(step) && works(i, step);
                    case Act.Read read -> read.topic().step().equals(step) && stands(i, read) && asks(i, read);
                    case Act.Lapsed lapsed -> false;
                };
                if (changed) {
                    return true;
                }
            }
            return false;
        }

        /** Whether it is the last reading before its step is signed, it lapses, or the log ends. */
        private boolean stands(int at, Act.Read read) {
            for (int i = at + 1; i < log.size(); i++) {
                if (signs(log.get(i), read.topic().step()) || ends(log.get(i), read.topic())) {
                    return true;
                }
                if (isOf(log.get(i), read.topic())) {
                    return false;
                }
            }
            return true;
        }

        private boolean asks(int at, Act.Read read) {
            int from = lifeBegins(at, read.topic());
            int signed = before(at, act -> signs(act, read.topic().step()));
            int basis = signed > from ? before(signed, act -> isOf(act, read.topic())) : -1;
            boolean known = basis > from;
            if (read.topic().sort() == Sort.JUDGED) {
                return read.value() > LIMIT && !(known && read.value() <= value(basis));
            }
            int first = known ? basis : after(from, read.topic());
            return value(first) != read.value();
        }

        /** What was read of a result tells nothing of it once it was done again or the reading lapsed. */
        private int lifeBegins(int at, Topic topic) {
            if (topic.sort() == Sort.SUITED) {
                return -1;
            }
            for (int i = at - 1; i >= 0; i--) {
                if (ends(log.get(i), topic)
                        || (log.get(i) instanceof Act.Signed signed
                                && signed.step().equals(topic.step())
                                && works(i, topic.step()))) {
                    return i;
                }
            }
            return -1;
        }

        private boolean works(int at, String step) {
            return log.get(at) instanceof Act.Signed signed
                    && (signed.changed() || before(at, act -> signs(act, step)) < 0);
        }

        private int value(int at) {
            return log.get(at) instanceof Act.Read read ? read.value() : -1;
        }

        private int after(int from, Topic topic) {
            int i = from + 1;
            while (!isOf(log.get(i), topic)) {
                i++;
            }
            return i;
        }

        private int before(int end, java.util.function.Predicate<Act> which) {
            int i = end - 1;
            while (i >= 0 && !which.test(log.get(i))) {
                i--;
            }
            return i;
        }

        private static boolean signs(Act act, String step) {
            return act instanceof Act.Signed signed && signed.step().equals(step);
        }

        private static boolean isOf(Act act, Topic topic) {
            return act instanceof Act.Read read && read.topic().equals(topic);
        }

        private static boolean ends(Act act, Topic topic) {
            return act instanceof Act.Lapsed lapsed && lapsed.topic().equals(topic) && topic.sort() != Sort.SUITED;
        }
    }

    private static WorkGraph randomGraph(Random random, int size) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            List<String> rests = new ArrayList<>();
            for (int below = Math.max(0, i - 5); below < i; below++) {
                if (random.nextInt(3) == 0) {
                    rests.add("s" + below);
                }
            }
            steps.add(new Step("s" + i, Stage.PADDED, "do " + i, "", rests, List.of()));
        }
        return WorkGraph.of(steps);
    }
}
