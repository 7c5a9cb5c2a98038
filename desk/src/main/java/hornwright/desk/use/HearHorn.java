package hornwright.desk.use;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Job;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.Reasons;
import hornwright.bench.sound.Comparison;
import hornwright.bench.sound.ComparisonChapter;
import hornwright.bench.sound.LeakAnswer;
import hornwright.bench.sound.LeakSuspects;
import hornwright.bench.sound.SoundAnswer;
import hornwright.bench.sound.SoundChapter;
import hornwright.bench.sound.SoundQuestion;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** How a horn plays, as everything stands now. One answer a job is remembered, and made again when its question changes. */
public final class HearHorn {
    private record Made(SoundQuestion question, SoundAnswer answer) {}

    /** What leaks do on a keywork does not depend on the horn; a few seconds each, so reckoned once. */
    private static final Map<Keywork, LeakSuspects> LEAKS = new ConcurrentHashMap<>();

    private final Shop shop;
    private final Map<String, Made> last = new ConcurrentHashMap<>();

    public HearHorn(Shop shop) {
        this.shop = shop;
    }

    public SoundAnswer of(Job job, Keywork keywork, Plan plan) {
        return of(job, keywork, plan, Set.of());
    }

    /** @param chosen fingerings that heights shall bring nearer; empty for every note outside the band */
    public SoundAnswer of(Job job, Keywork keywork, Plan plan, Set<String> chosen) {
        SoundQuestion question = question(job, keywork, plan, chosen);
        Made made = last.get(job.id());
        if (made != null && made.question().equals(question)) {
            return made.answer();
        }
        SoundAnswer answer = SoundChapter.answer(question);
        last.put(job.id(), new Made(question, answer));
        return answer;
    }

    /** Arrival and now over each other. */
    public Comparison compare(Job job, Keywork keywork, Plan plan) {
        List<Reading> readings = new ArrayList<>(job.readings().former());
        readings.addAll(job.readings().current());
        return ComparisonChapter.compare(question(job, keywork, plan, Set.of()), readings);
    }

    /** What leaks do on this keywork; seconds the first time. */
    public LeakSuspects leaks(Keywork keywork) {
        return LEAKS.computeIfAbsent(keywork, one -> LeakSuspects.of(one, SoundChapter.AIR));
    }

    /** Where to look first, from the last test in which the player said how notes answer. */
    public Optional<LeakAnswer> suspects(Job job, Keywork keywork) {
        return said(job).map(test -> LeakAnswer.of(keywork, leaks(keywork), test));
    }

    /** Why a leak takes so much from a note, when that is what this id of a because asks; nothing otherwise. */
    public Becauses whyLost(Keywork keywork, String id) {
        String[] parts = id.split("/", -1);
        boolean asked = parts.length == 5
                && id.startsWith("sound/leak/")
                && keywork.cups().contains(parts[2]);
        Reasons reasons = new Reasons();
        if (asked) {
            LeakSuspects.sizesMm().stream()
                    .filter(size -> String.valueOf(size).equals(parts[3]))
                    .forEach(size -> LeakAnswer.suffering(
                            keywork,
                            shop.house().state().measuredRules(),
                            leaks(keywork),
                            keywork.cups().get(parts[2]),
                            size,
                            reasons));
        }
        return reasons.table();
    }

    /** The last test in which the player said how notes answer. */
    public static Optional<PlayTest> said(Job job) {
        return job.playTests().stream()
                .filter(test -> !test.answers().isEmpty())
                .reduce((first, second) -> second);
    }

    private SoundQuestion question(Job job, Keywork keywork, Plan plan, Set<String> chosen) {
        return new SoundQuestion(
                keywork,
                plan,
                shop.house().state().measuredRules(),
                job.readings().current(),
                List.copyOf(job.decisions().values()),
                job.playTests(),
                chosen);
    }
}
