package hornwright.desk.use;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Job;
import hornwright.bench.plan.Plan;
import hornwright.bench.sound.SoundAnswer;
import hornwright.bench.sound.SoundChapter;
import hornwright.bench.sound.SoundQuestion;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** How a horn plays, as everything stands now. One answer a job is remembered, and made again when its question changes. */
public final class HearHorn {
    private record Made(SoundQuestion question, SoundAnswer answer) {}

    private final Shop shop;
    private final Map<String, Made> last = new ConcurrentHashMap<>();

    public HearHorn(Shop shop) {
        this.shop = shop;
    }

    public SoundAnswer of(Job job, Keywork keywork, Plan plan) {
        SoundQuestion question = new SoundQuestion(
                keywork,
                plan,
                shop.house().state().measuredRules(),
                job.readings().current(),
                List.copyOf(job.decisions().values()),
                job.playTests());
        Made made = last.get(job.id());
        if (made != null && made.question().equals(question)) {
            return made.answer();
        }
        SoundAnswer answer = SoundChapter.answer(question);
        last.put(job.id(), new Made(question, answer));
        return answer;
    }
}
